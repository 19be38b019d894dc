#include "commands.hpp"

#include "../files/files.hpp"
#include "../readers/day_reader.hpp"
#include "../sheet/make_sheet.hpp"
#include "../writers/json.hpp"
#include "../writers/writers.hpp"
#include "work_out_day.hpp"

namespace whittaw::app {

namespace {

Outcome<Status> run(const Arguments &arguments) {
  auto results = work_out_day(arguments);
  if (!results) return results.problem();
  const std::string text = arguments.has("--json")
                               ? batch_json(*results)
                               : write_text(make_report(*results, *units_of(arguments)));
  if (auto fault = write_output(arguments.value("--output"), text)) return *fault;
  return says_stop(results->checks) ? Status::check_says_stop : Status::done;
}

} // namespace

CommandRecord batch_command() {
  return {"batch",
          "DAY.toml",
          1,
          1,
          "size a day's paste: every hide, ingredient and check",
          {units_option, chance_option, workshop_option, json_option, output_option},
          "whittaw batch recipes/demo/day.toml",
          &run};
}

} // namespace whittaw::app
