// Recipes from TOML: those built in, and files of the user.
#pragma once

#include "node.hpp"

#include <whittaw/paste/recipe.hpp>

#include <span>
#include <string>
#include <string_view>

namespace whittaw::app {

/// A recipe compiled into the program from recipes/.
struct BuiltInRecipe {
  std::string_view name;
  std::string_view text;
};
std::span<const BuiltInRecipe> built_in_recipes();

Outcome<Recipe> parse_recipe(const SourceText &source);

/// A built-in recipe by its name, or a file where `name` ends in .toml or holds a slash, taken from
/// `folder` unless it is absolute.
Outcome<Recipe> find_recipe(const std::string &name, const std::string &folder);

} // namespace whittaw::app
