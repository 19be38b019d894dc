// The workshop file: scoops, scale, tolerance, own weighings.
#pragma once

#include "node.hpp"

#include <whittaw/paste/workshop.hpp>

#include <optional>
#include <string>

namespace whittaw::app {

Outcome<Workshop> parse_workshop(const SourceText &source);

/// The workshop named, or `workshop.toml` in `folder` if there is one, or an empty one.
Outcome<Workshop> find_workshop(const std::optional<std::string> &path, const std::string &folder);

/// The folder part of a path; empty for none.
std::string folder_of(const std::string &path);

} // namespace whittaw::app
