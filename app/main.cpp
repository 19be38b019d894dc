#include "commands/commands.hpp"
#include "files/files.hpp"

#include <csignal>
#include <cstdio>

namespace whittaw::app {

namespace {

constexpr std::string_view help_option = "--help";

int finish(const Fault &fault) {
  std::fputs(write_fault(fault).c_str(), stderr);
  return static_cast<int>(fault.status);
}

int print(const std::string &text) {
  if (const auto fault = write_output(std::nullopt, text)) return finish(*fault);
  return 0;
}

int run(const std::vector<std::string> &words) {
  if (words.empty()) {
    std::fputs(general_help().c_str(), stderr);
    return static_cast<int>(Status::usage);
  }
  if (words[0] == help_option || words[0] == "-h" || words[0] == "help")
    return print(general_help());
  if (words[0] == "--version") return print("whittaw " WHITTAW_VERSION "\n");
  std::vector<std::string_view> names;
  for (const auto &command : commands()) {
    names.push_back(command.name);
    if (command.name != words[0]) continue;
    const auto arguments = parse_arguments(command, {words.begin() + 1, words.end()});
    if (!arguments) return finish(arguments.problem());
    if (arguments->has(help_option)) return print(command_help(command));
    const auto status = command.run(*arguments);
    return status ? static_cast<int>(*status) : finish(status.problem());
  }
  return finish({Status::usage, "", "'" + words[0] + "' is not a command", "", 0,
                 did_you_mean(words[0], names) + "see whittaw --help"});
}

} // namespace

} // namespace whittaw::app

int main(int count, char **words) {
  // A reader that hangs up, or a size limit, is an error like any other and not a killing signal.
  std::signal(SIGPIPE, SIG_IGN);
  std::signal(SIGXFSZ, SIG_IGN);
  return whittaw::app::run({words + 1, words + count});
}
