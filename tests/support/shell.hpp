// Runs an outside program, for tests that hold the library against one.
#pragma once

#include <array>
#include <cstdio>
#include <string>

namespace whittaw_test {

struct Output {
  int status = -1; ///< as pclose gives it; 0 when the program ran and was content
  std::string text;
};

/// Runs `command` in the shell; what it writes to standard output is kept, less the last line end.
inline Output run(const std::string &command) {
  Output output;
  std::FILE *pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) return output;
  std::array<char, 256> buffer{};
  while (std::fgets(buffer.data(), static_cast<int>(buffer.size()), pipe) != nullptr)
    output.text += buffer.data();
  output.status = pclose(pipe);
  while (!output.text.empty() && output.text.back() == '\n') output.text.pop_back();
  return output;
}

} // namespace whittaw_test
