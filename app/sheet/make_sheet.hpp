// Sheets from the library's results.
#pragma once

#include "sheet.hpp"

#include <whittaw/paste/wording.hpp>

namespace whittaw::app {

/// All that a command knows of a day once the library has done its work.
struct DayResults {
  Day day;
  Workshop workshop;
  Batch batch;
  Portions portions;
  std::vector<Check> checks;
  std::vector<Caution> cautions;
  std::vector<std::string> sources;
};

Result<DayResults> work_out(Day day, Workshop workshop, UnitSystem units);

/// The card that hangs on the bucket.
Sheet make_card(const DayResults &results, UnitSystem units);
/// The plain report: every hide, every figure.
Sheet make_report(const DayResults &results, UnitSystem units);

} // namespace whittaw::app
