// What the commands on a day share: read it, and let the library work it out.
#pragma once

#include "../command_line/command_line.hpp"
#include "../sheet/make_sheet.hpp"

namespace whittaw::app {

inline constexpr OptionRecord chance_option{"--chance", "SHARE",
                                            "chance that the paste is enough (90 %)"};

/// The day named by the first operand, with --workshop, --chance and --units taken into account.
Outcome<DayResults> work_out_day(const Arguments &arguments);

} // namespace whittaw::app
