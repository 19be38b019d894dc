// One entry of the powder book as text, both ways.
#pragma once

#include "../readers/node.hpp"

#include <whittaw/powder/book.hpp>

#include <string>
#include <string_view>

namespace whittaw::app {

/// An entry as it stands in the file, its closing line included.
std::string write_entry(const PowderEntry &entry);

/// Reads a block that starts with [[entry]] in line `line` of the file; a problem if it is unsound.
/// Blocks as the program writes them are read by lines; what a person has mended goes through the
/// TOML parser.
Result<PowderEntry> read_entry(std::string_view block, std::uint32_t line,
                               const std::string &file_name);

} // namespace whittaw::app
