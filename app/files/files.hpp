// Reading a file whole and writing one so that nothing half-written is left.
#pragma once

#include "../fault.hpp"

#include <optional>
#include <string>
#include <vector>

namespace whittaw::app {

/// Larger files are not what a person wrote.
inline constexpr std::size_t largest_file = std::size_t{32} * 1024 * 1024;

/// A file's text, or standard input's for "-". Faults: not there, a directory, too large,
/// unreadable.
Outcome<std::string> read_file(const std::string &path);

/// A fault if the output is one of the files that were read.
std::optional<Fault> refuse_overwriting(const std::optional<std::string> &output,
                                        const std::vector<std::string> &inputs);

/// Writes a file beside its place and renames it over, so that a failure leaves what was there.
/// A path that is not a regular file (a pipe, a terminal) is written straight. No path: standard
/// output. Gives a fault, or nothing when all is written.
std::optional<Fault> write_output(const std::optional<std::string> &path, const std::string &text);

} // namespace whittaw::app
