// A day's work from TOML.
#pragma once

#include "node.hpp"

#include <whittaw/paste/day.hpp>
#include <whittaw/paste/workshop.hpp>

#include <optional>
#include <string>

namespace whittaw::app {

/// What a day file says besides the day: it may name its workshop.
struct DayFile {
  Day day;
  Workshop workshop;
};

/// Reads a day, its recipe, and the workshop: `workshop_path` if given, else the one that the day
/// names, else `workshop.toml` beside it.
Outcome<DayFile> read_day(const std::string &path, const std::optional<std::string> &workshop_path);

/// A species by its name; a problem with the nearest name otherwise. `mammal` is not offered.
Result<const Species *> named_species(std::string_view name);

} // namespace whittaw::app
