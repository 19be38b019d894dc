#include "commands.hpp"

#include <array>

namespace whittaw::app {

namespace {

std::array<CommandRecord, 6> make_commands() {
  std::array<CommandRecord, 6> all{batch_command(),   card_command(),   area_command(),
                                   convert_command(), recipe_command(), powder_command()};
  for (auto &command : all) command.options.push_back({"--help", "", "print this and stop"});
  return all;
}

} // namespace

std::span<const CommandRecord> commands() {
  static const auto all = make_commands();
  return all;
}

} // namespace whittaw::app
