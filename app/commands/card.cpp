#include "commands.hpp"

#include "../files/files.hpp"
#include "../writers/writers.hpp"
#include "work_out_day.hpp"

#include <array>

namespace whittaw::app {

namespace {

constexpr OptionRecord format_option{"--format", "text|html",
                                     "form of the card (html if FILE ends so, else text)"};
constexpr OptionRecord paper_option{"--paper", "a4|letter", "page of the HTML card (a4)"};

/// One of two words, or a fault that names both.
Outcome<bool> is_second(const Arguments &arguments, const OptionRecord &option,
                        std::string_view first, std::string_view second, bool otherwise) {
  const auto text = arguments.value(option.name);
  if (!text) return otherwise;
  if (*text == first) return false;
  if (*text == second) return true;
  const std::array<std::string_view, 2> names{first, second};
  return Fault{Status::usage,
               std::string(option.name),
               "'" + *text + "' is not known",
               "",
               0,
               did_you_mean(*text, names) + "known: " + std::string(option.value)};
}

Outcome<Status> run(const Arguments &arguments) {
  const auto path = arguments.value("--output");
  const bool named_html = path && (path->ends_with(".html") || path->ends_with(".htm"));
  const auto html = is_second(arguments, format_option, "text", "html", named_html);
  if (!html) return html.problem();
  const auto letter = is_second(arguments, paper_option, "a4", "letter", false);
  if (!letter) return letter.problem();
  auto results = work_out_day(arguments);
  if (!results) return results.problem();
  const Sheet card = make_card(*results, *units_of(arguments));
  const std::string text =
      *html ? write_html(card, *letter ? Paper::letter : Paper::a4) : write_text(card);
  if (auto fault = write_output(path, text)) return *fault;
  return says_stop(results->checks) ? Status::check_says_stop : Status::done;
}

} // namespace

CommandRecord card_command() {
  return {
      "card",
      "DAY.toml",
      1,
      1,
      "the mixing card that hangs on the bucket, as text or a page to print",
      {format_option, paper_option, units_option, chance_option, workshop_option, output_option},
      "whittaw card recipes/demo/day.toml -o card.html",
      &run};
}

} // namespace whittaw::app
