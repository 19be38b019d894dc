// TOML as plain nodes: what is UTF-8, and where things stand.
#include <readers/node.hpp>

#include <close.hpp>

#include <doctest/doctest.h>

#include <string>
#include <string_view>

using namespace whittaw::app;
using whittaw_test::has;

namespace {
Outcome<Node> read(std::string text) { return read_toml({"day.toml", std::move(text)}); }

bool reads_as_utf8(std::string_view bytes) {
  const auto node = read("# " + std::string(bytes) + "\n");
  return node || !has(node.problem().found, "is not UTF-8");
}
} // namespace

TEST_CASE("UTF-8 of RFC 3629, first and last of each length") {
  CHECK(reads_as_utf8("\x7e"));
  CHECK(reads_as_utf8("\xc2\x80"));
  CHECK(reads_as_utf8("\xdf\xbf"));
  CHECK(reads_as_utf8("\xe0\xa0\x80"));
  CHECK(reads_as_utf8("\xed\x9f\xbf")); // U+D7FF, before the surrogates
  CHECK(reads_as_utf8("\xee\x80\x80")); // U+E000, after them
  CHECK(reads_as_utf8("\xef\xbf\xbf"));
  CHECK(reads_as_utf8("\xf0\x90\x80\x80"));
  CHECK(reads_as_utf8("\xf4\x8f\xbf\xbf")); // U+10FFFF
}

TEST_CASE("what is not UTF-8 by RFC 3629") {
  CHECK_FALSE(reads_as_utf8("\x80")); // goes on with nothing begun
  CHECK_FALSE(reads_as_utf8("\xbf"));
  CHECK_FALSE(reads_as_utf8("\xc0\x80")); // overlong
  CHECK_FALSE(reads_as_utf8("\xc1\xbf"));
  CHECK_FALSE(reads_as_utf8("\xe0\x9f\xbf"));
  CHECK_FALSE(reads_as_utf8("\xf0\x8f\xbf\xbf"));
  CHECK_FALSE(reads_as_utf8("\xed\xa0\x80")); // surrogates
  CHECK_FALSE(reads_as_utf8("\xed\xbf\xbf"));
  CHECK_FALSE(reads_as_utf8("\xf4\x90\x80\x80")); // past U+10FFFF
  CHECK_FALSE(reads_as_utf8("\xf5\x80\x80\x80"));
  CHECK_FALSE(reads_as_utf8("\xff"));
  CHECK_FALSE(reads_as_utf8("\xfe"));
  CHECK_FALSE(reads_as_utf8("\xc2")); // broken off by the line's end
  CHECK_FALSE(reads_as_utf8("\xe2\x82"));
  CHECK_FALSE(reads_as_utf8("\xf0\x90\x80"));
  CHECK_FALSE(reads_as_utf8("\xe2\x28\xa1")); // broken in the middle
  CHECK_FALSE(reads_as_utf8("caf\xe9"));      // Latin-1
}

TEST_CASE("a sequence broken off by the end of the file is not read past it") {
  for (const std::string_view end : {"\xc2", "\xe2", "\xe2\x82", "\xf0\x9f\x90"}) {
    const auto node = read("# " + std::string(end));
    REQUIRE_FALSE(node);
    CHECK(node.problem().place == "day.toml:1");
    CHECK(has(node.problem().found, "byte 3 of the file is not UTF-8"));
  }
}

TEST_CASE("the line and byte of what is not UTF-8") {
  const auto node = read("a = 1\nb = 2\n# \xff\n");
  REQUIRE_FALSE(node);
  CHECK(node.problem().status == Status::bad_data);
  CHECK(node.problem().place == "day.toml:3");
  CHECK(has(node.problem().found, "byte 15 ")); // 6 + 6 + "# " and then it
}

TEST_CASE("values keep their type, text and place") {
  const auto root = read("a = \"text\"\n b = [1, 2.5, true]\n[c]\nd = 2026-11-07\n");
  REQUIRE(root);
  REQUIRE(root->type == Node::Type::table);
  REQUIRE(root->entries.size() == 3);
  const auto &a = root->entries[0];
  CHECK(a.key == "a");
  CHECK(a.value.type == Node::Type::text);
  CHECK(a.value.text == "text");
  CHECK(a.place.line == 1);
  CHECK(a.place.column == 1);
  CHECK(a.value.place.column == 5);
  const auto &b = root->entries[1];
  CHECK(b.place.line == 2);
  CHECK(b.place.column == 2);
  REQUIRE(b.value.items.size() == 3);
  CHECK(b.value.items[0].integer == 1);
  CHECK(b.value.items[1].type == Node::Type::number);
  CHECK(b.value.items[2].type == Node::Type::boolean);
  CHECK(b.value.items[2].place.column == 15);
  const auto &d = root->entries[2].value.entries.at(0);
  CHECK(d.value.type == Node::Type::date);
  CHECK(d.value.text == "2026-11-07");
}

TEST_CASE("a fault shows the line it stands in, without the line's end") {
  const SourceText source{"day.toml", "one\ntwo\r\nthree"};
  CHECK(fault_at(source, {1, 2}, "why", "do").excerpt == "one");
  CHECK(fault_at(source, {2, 1}, "why", "do").excerpt == "two");
  CHECK(fault_at(source, {3, 1}, "why", "do").excerpt == "three");
  CHECK(fault_at(source, {3, 1}, "why", "do").place == "day.toml:3:1");
  CHECK(fault_at(source, {9, 1}, "why", "do").excerpt.empty()); // past the end
  CHECK(fault_at(source, {0, 0}, "why", "do").place == "day.toml");
}
