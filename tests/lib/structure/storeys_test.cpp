// The plan of the library: which storey may see which, and what none may see.
#include "close.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using Storeys = std::set<std::string>;

/// What each storey may include besides itself.
const std::map<std::string, Storeys> plan{
    {"quantity", {}},
    {"substance", {"quantity"}},
    {"hide", {"quantity"}},
    {"liquor", {"quantity", "substance"}},
    {"paste", {"quantity", "substance", "hide", "liquor"}},
    {"powder", {"quantity", "substance", "liquor", "paste"}},
    {"work", {"quantity", "substance", "hide", "paste", "powder"}},
};
const std::set<std::string> banned{"iostream", "istream", "ostream", "sstream",    "fstream",
                                   "iomanip",  "locale",  "regex",   "filesystem", "thread",
                                   "chrono",   "ctime",   "time.h",  "future",     "mutex"};

struct Header {
  std::string storey; ///< empty for the header of everything
  std::string name;
  std::size_t lines = 0;
  std::vector<std::string> includes;
  bool once = false;
};

std::vector<Header> headers() {
  std::vector<Header> all;
  const fs::path root = WHITTAW_HEADERS;
  for (const auto &entry : fs::recursive_directory_iterator(root)) {
    if (!entry.is_regular_file()) continue;
    const fs::path inside = fs::relative(entry.path(), root);
    Header header;
    header.name = inside.string();
    if (inside.has_parent_path()) header.storey = inside.begin()->string();
    std::ifstream file(entry.path());
    for (std::string line; std::getline(file, line); ++header.lines) {
      if (line == "#pragma once") header.once = true;
      const std::size_t from = line.find_first_of("<\"");
      const std::size_t word = line.find_first_not_of(" \t");
      if (word == std::string::npos || line[word] != '#') continue;
      if (line.find("include") == std::string::npos || from == std::string::npos) continue;
      header.includes.push_back(
          line.substr(from + 1, line.find_first_of(">\"", from + 1) - from - 1));
    }
    all.push_back(std::move(header));
  }
  return all;
}

} // namespace

TEST_CASE("there are headers to look at, in known storeys") {
  const auto all = headers();
  CHECK(all.size() >= 25);
  for (const auto &header : all) {
    CAPTURE(header.name);
    CHECK(header.once);
    if (!header.storey.empty()) CHECK(plan.contains(header.storey));
  }
}

TEST_CASE("a storey includes only storeys that the plan lets it see") {
  std::size_t looked_at = 0;
  for (const auto &header : headers()) {
    if (header.storey.empty()) continue;
    for (const auto &include : header.includes) {
      if (!include.starts_with("whittaw/")) continue;
      CAPTURE(header.name);
      CAPTURE(include);
      const std::string rest = include.substr(std::string("whittaw/").size());
      const std::string other = rest.substr(0, rest.find('/'));
      const bool allowed = other == header.storey || plan.at(header.storey).contains(other);
      CHECK(allowed);
      ++looked_at;
    }
  }
  CHECK(looked_at > 40);
}

TEST_CASE("the library knows no terminal, file, clock, locale or thread, and Boost only") {
  for (const auto &header : headers()) {
    for (const auto &include : header.includes) {
      CAPTURE(header.name);
      CAPTURE(include);
      CHECK_FALSE(banned.contains(include));
      const bool known = include.starts_with("whittaw/") || include.starts_with("boost/") ||
                         include.find('/') == std::string::npos;
      CHECK(known);
    }
  }
}

TEST_CASE("no header is longer than 400 lines") {
  for (const auto &header : headers()) {
    CAPTURE(header.name);
    CHECK(header.lines <= 400);
  }
}

TEST_CASE("the header of everything includes every header") {
  std::set<std::string> reached;
  const auto all = headers();
  std::vector<std::string> next{"whittaw/whittaw.hpp"};
  while (!next.empty()) {
    const std::string name = next.back();
    next.pop_back();
    if (!reached.insert(name).second) continue;
    for (const auto &header : all)
      if ("whittaw/" + header.name == name)
        for (const auto &include : header.includes)
          if (include.starts_with("whittaw/")) next.push_back(include);
  }
  for (const auto &header : all) {
    CAPTURE(header.name);
    CHECK(reached.contains("whittaw/" + header.name));
  }
}
