// Dates and times as they are written in files.
#pragma once

#include <string_view>

namespace whittaw::app {

/// 2026-11-07: a day that the calendar has, from 1900 on.
bool is_date(std::string_view text);

/// 2026-11-20T18:04:00Z: such a day, and a time of it.
bool is_time(std::string_view text);

} // namespace whittaw::app
