// Rules of the program's sources, its reference and its tests.
#include <close.hpp>
#include <shell.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

namespace {

namespace fs = std::filesystem;
using whittaw_test::has;

std::string contents(const fs::path &path) {
  std::ifstream file(path);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

std::vector<fs::path> files(const fs::path &folder, std::string_view extension) {
  std::vector<fs::path> found;
  for (const auto &entry : fs::recursive_directory_iterator(folder))
    if (entry.path().extension() == extension) found.push_back(entry.path());
  std::sort(found.begin(), found.end());
  return found;
}

/// Parsers and drawing libraries of others: how an include of each begins.
constexpr std::array<std::string_view, 6> third_party{"<CLI",   "<toml",  "<nlohmann",
                                                      "<svgpp", "<cairo", "<pango"};

std::set<std::string_view> third_parties_of(const std::string &source) {
  std::set<std::string_view> found;
  for (const auto name : third_party)
    if (has(source, "#include " + std::string(name))) found.insert(name);
  return found;
}

/// Whether `option` stands in `text` as a whole: --at is not in --attic or x--at.
bool names_option(std::string_view text, std::string_view option) {
  const auto part_of_word = [](char c) {
    return c == '-' || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
  };
  for (std::size_t at = text.find(option); at != std::string_view::npos;
       at = text.find(option, at + 1)) {
    const std::size_t end = at + option.size();
    if ((at == 0 || !part_of_word(text[at - 1])) &&
        (end == text.size() || !part_of_word(text[end])))
      return true;
  }
  return false;
}

/// The options of each command, as the program's own help tells them.
std::map<std::string, std::vector<std::string>> options_by_command() {
  std::map<std::string, std::vector<std::string>> options;
  std::istringstream help(whittaw_test::run("'" WHITTAW_PROGRAM "' --help").text);
  for (std::string line; std::getline(help, line);) {
    // Two blanks, a name in small letters, and what it is for.
    const std::size_t end = line.find(' ', 2);
    if (!line.starts_with("  ") || end == std::string::npos || end < 3) continue;
    if (line.starts_with("  whittaw ")) continue; // how to ask for more help
    const std::string name = line.substr(2, end - 2);
    if (name.find_first_not_of("abcdefghijklmnopqrstuvwxyz") == std::string::npos)
      options[name] = {};
  }
  for (auto &[command, names] : options) {
    std::istringstream own(whittaw_test::run("'" WHITTAW_PROGRAM "' " + command + " --help").text);
    for (std::string line; std::getline(own, line);)
      if (line.starts_with("  --")) names.push_back(line.substr(2, line.find(' ', 2) - 2));
  }
  return options;
}

/// The command lines of a case: what stands between "--- run" and the next section.
std::string run_part(const std::string &text) {
  std::size_t start = text.find("--- run\n");
  if (start == std::string::npos) return "";
  start += 8;
  return text.substr(start, text.find("\n--- ", start) - start);
}

} // namespace

TEST_CASE("the help tells of commands and options, or the tests below prove nothing") {
  const auto options = options_by_command();
  REQUIRE(options.size() >= 5);
  for (const auto &row : options) {
    const std::string &command = row.first;
    const auto &names = row.second;
    CAPTURE(command);
    CHECK(names.size() >= 2);
    CHECK(std::find(names.begin(), names.end(), "--help") != names.end());
  }
}

TEST_CASE("no header of the program includes a parser or a drawing library") {
  const auto headers = files(WHITTAW_APP, ".hpp");
  REQUIRE(headers.size() > 5);
  for (const auto &header : headers) {
    CAPTURE(header.string());
    CHECK(third_parties_of(contents(header)).empty());
  }
}

TEST_CASE("a source file includes at most one of them") {
  for (const auto &source : files(WHITTAW_APP, ".cpp")) {
    CAPTURE(source.string());
    CHECK(third_parties_of(contents(source)).size() <= 1);
  }
}

TEST_CASE("commands include none of them") {
  for (const auto &source : files(WHITTAW_APP "/commands", ".cpp")) {
    CAPTURE(source.string());
    CHECK(third_parties_of(contents(source)).empty());
  }
}

TEST_CASE("every option of every command stands in the command reference") {
  const std::string reference = contents(WHITTAW_DOCS "/commands.md");
  REQUIRE_FALSE(reference.empty());
  for (const auto &row : options_by_command()) {
    const std::string &command = row.first;
    const auto &names = row.second;
    CHECK_MESSAGE(has(reference, "whittaw " + command), command);
    for (const auto &option : names)
      CHECK_MESSAGE(names_option(reference, option), command << " " << option);
  }
}

TEST_CASE("every option of every command is used in a case of the command line") {
  std::vector<std::string> lines;
  for (const auto &path : files(WHITTAW_CASES, ".test")) {
    std::istringstream run(run_part(contents(path)));
    for (std::string line; std::getline(run, line);) lines.push_back(line);
  }
  REQUIRE(lines.size() > 50);
  for (const auto &row : options_by_command()) {
    const std::string &command = row.first;
    const auto &names = row.second;
    for (const auto &option : names) {
      if (option == "--help") continue; // help_of_each_command.test takes them in a loop
      const bool used = std::any_of(lines.begin(), lines.end(), [&](const std::string &line) {
        return has(line, "whittaw " + command + " ") && names_option(line, option);
      });
      CHECK_MESSAGE(used, command << " " << option);
    }
  }
}
