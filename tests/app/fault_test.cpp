// The one form of every error, and the nearest word.
#include <fault.hpp>

#include <doctest/doctest.h>

#include <array>
#include <string>
#include <string_view>

using namespace whittaw::app;

TEST_CASE("edits between two words, counted by hand") {
  CHECK(edits_between("", "") == 0);
  CHECK(edits_between("", "salt") == 4);
  CHECK(edits_between("salt", "") == 4);
  CHECK(edits_between("salt", "salt") == 0);
  CHECK(edits_between("salt", "sault") == 1);     // a letter more
  CHECK(edits_between("salt", "sat") == 1);       // one less
  CHECK(edits_between("salt", "malt") == 1);      // one changed
  CHECK(edits_between("gaot", "goat") == 1);      // two swapped count once
  CHECK(edits_between("kitten", "sitting") == 3); // k to s, e to i, g at the end
  CHECK(edits_between("abcd", "badc") == 2);      // two swaps
  CHECK(edits_between("flaw", "lawn") == 2);      // f off the front, n at the end
  CHECK(edits_between("goat", "gaot") == edits_between("gaot", "goat"));
}

TEST_CASE("edits of very long words cost no time") {
  const std::string longest(1'000'000, 'x');
  CHECK(edits_between(longest, "salt") <= 64);
  CHECK(edits_between(longest, longest) == 0);
}

TEST_CASE("the nearest word is near enough to have been meant") {
  constexpr std::array<std::string_view, 4> words{"goat", "sheep", "rabbit", "pig"};
  CHECK(nearest("gaot", words) == "goat");
  CHECK(nearest("shep", words) == "sheep");
  CHECK(nearest("rabit", words) == "rabbit");
  CHECK(nearest("rab", words) == "rabbit"); // a beginning
  CHECK(nearest("pg", words) == "pig");
  CHECK(nearest("hippopotamus", words).empty());
  CHECK(nearest("", words).empty());
  CHECK(nearest("x", words).empty());
  CHECK(did_you_mean("gaot", words) == "did you mean 'goat'? ");
  CHECK(did_you_mean("hippopotamus", words).empty());
}

TEST_CASE("what is printed holds no control characters") {
  CHECK(printable("plain, with ü, ½ and \u20ac") == "plain, with ü, ½ and \u20ac");
  CHECK(printable("a\tb") == "a b");
  CHECK(printable("a\x1b[31mb") == "a?[31mb");
  CHECK(printable("bell\a, back\b, return\r, end\n") == "bell?, back?, return?, end?");
  CHECK(printable("del\x7f") == "del?");
  CHECK(printable(std::string_view("nul\0end", 7)) == "nul?end");
  CHECK(printable("\u0080 \u009b2J \u009f") == "? ?2J ?"); // C1 controls, two bytes each
  CHECK(printable("\u00a0") == "\u00a0");                  // the first that is none
  CHECK(printable("end \xc2") == "end \xc2"); // cut in the middle: no byte read past it
}

TEST_CASE("a fault has place, reason, line, mark and remedy, in that order") {
  const Fault whole{Status::bad_data,
                    "day.toml:6:15",
                    "live_weight: '27 L' is a volume",
                    "live_weight = \"27 L\"",
                    15,
                    "write a mass"};
  CHECK(write_fault(whole) == "whittaw: day.toml:6:15: live_weight: '27 L' is a volume\n"
                              "    live_weight = \"27 L\"\n"
                              "                  ^\n"
                              "  write a mass\n");
  CHECK(write_fault({Status::usage, "", "no size", "", 0, "give one"}) ==
        "whittaw: no size\n  give one\n");
  CHECK(write_fault({Status::usage, "--units", "is empty", "", 0, ""}) ==
        "whittaw: --units: is empty\n");
  CHECK(write_fault({Status::bad_data, "f", "why", "line", 0, ""}) ==
        "whittaw: f: why\n    line\n"); // no column, no mark
  CHECK(write_fault({Status::bad_data, "f", "why", "line", 5, ""}) ==
        "whittaw: f: why\n    line\n        ^\n"); // behind the last letter
}

TEST_CASE("a fault cannot drive the terminal") {
  const std::string text =
      write_fault({Status::bad_data, "\x1b[1m", "\x1b[2m", "\x1b[3m", 1, "\x1b[4m"});
  CHECK(text.find('\x1b') == std::string::npos);
}

TEST_CASE("of a long line the part around the mark is shown, and the mark stays under it") {
  std::string line(1000, '.');
  for (const std::size_t column : {1U, 49U, 50U, 51U, 100U, 500U, 951U, 1000U}) {
    CAPTURE(column);
    std::string marked = line;
    marked[column - 1] = 'X';
    const std::string text = write_fault({Status::bad_data, "", "why", marked, column, ""});
    const std::size_t first = text.find('\n') + 1;
    const std::size_t second = text.find('\n', first) + 1;
    const std::size_t third = text.find('\n', second);
    CHECK(second - first - 1 <= 104);
    CHECK(text.substr(first, second - first).find('X') ==
          text.substr(second, third - second).find('^'));
  }
}

TEST_CASE("a long line of letters beyond ASCII is cut between letters") {
  std::string line;
  for (int i = 0; i < 400; ++i) line += "ü";
  const std::string text = write_fault({Status::bad_data, "", "why", line, 200, ""});
  const std::size_t first = text.find('\n') + 5;
  const std::string shown = text.substr(first, text.find('\n', first) - first);
  REQUIRE(!shown.empty());
  CHECK((static_cast<unsigned char>(shown.front()) & 0xC0U) != 0x80U);
  CHECK(shown.size() % 2 == 0);
}
