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
  std::vector<std::string> inputs; ///< files that were or may have been read
};

/// Reads a day, its recipe, and the workshop: `workshop_path` if given, else the one that the day
/// names, else `workshop.toml` beside it.
Outcome<DayFile> read_day(const std::string &path, const std::optional<std::string> &workshop_path);

/// Readers with the bounds that files and options share.
Result<Chance> read_any_chance(std::string_view text);
Result<Temperature> read_water_temperature(std::string_view text);

/// A species by its name; a problem with the nearest name otherwise. `mammal` is not offered.
Result<const Species *> named_species(std::string_view name);

} // namespace whittaw::app
