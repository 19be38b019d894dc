// The commands: read, call the library, write.
#pragma once

#include "../command_line/command_line.hpp"

namespace whittaw::app {

CommandRecord batch_command();
CommandRecord card_command();
CommandRecord area_command();
CommandRecord convert_command();
CommandRecord recipe_command();
CommandRecord powder_command();

} // namespace whittaw::app
