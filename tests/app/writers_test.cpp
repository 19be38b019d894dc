// Sheets as text and as a page.
#include <writers/writers.hpp>

#include <close.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <string_view>

using namespace whittaw::app;
using whittaw::Level;
using whittaw_test::has;

namespace {

std::size_t letters(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
  }));
}

std::size_t longest_line(std::string_view text) {
  std::size_t longest = 0;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    longest = std::max(longest, letters(text.substr(0, end)));
    text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
  }
  return longest;
}

/// A sheet with one text in every place that takes one.
Sheet full_of(const std::string &text) {
  Sheet sheet;
  sheet.title = text;
  sheet.subtitle = text;
  sheet.findings = {{Level::stop, text}, {Level::ok, text}};
  sheet.cautions = {text};
  sheet.steps = {{text, {{text, text, text, text}}}};
  sheet.tables = {{text, {text, text}, {{text, text}}, text, false},
                  {text, {text, text}, {{text, text}}, text, true}};
  sheet.remarks = {text};
  sheet.sources = {text};
  return sheet;
}

std::string prose(std::string_view word, int times) {
  std::string text;
  for (int i = 0; i < times; ++i) text += (i ? " " : "") + std::string(word);
  return text;
}

} // namespace

TEST_CASE("running text is never wider than 78 columns, whatever the length of its words") {
  for (const std::string_view word :
       {"a", "tan", "alum", "bicarbonate", "Gerbstoffüberschuß", "twenty-two-letter-word"}) {
    CAPTURE(word);
    Sheet sheet;
    sheet.title = "Card";
    sheet.subtitle = prose(word, 60);
    sheet.findings = {{Level::stop, prose(word, 60)}, {Level::note, prose(word, 60)}};
    sheet.cautions = {prose(word, 60)};
    sheet.steps = {{prose(word, 60), {{"alum", "42 g", "", prose(word, 60)}}}};
    sheet.remarks = {prose(word, 60)};
    sheet.sources = {prose(word, 60)};
    sheet.tables = {{"Hides", {"a"}, {{"b"}}, prose(word, 60), false}};
    CHECK(longest_line(write_text(sheet)) <= 78);
  }
}

TEST_CASE("a line is filled up to the last column and no further") {
  Sheet sheet;
  sheet.title = "Card";
  sheet.subtitle = std::string(39, 'x') + " " + std::string(38, 'y'); // 39 + 1 + 38 = 78
  CHECK(has(write_text(sheet), sheet.subtitle + "\n"));
  sheet.subtitle = std::string(39, 'x') + " " + std::string(39, 'y'); // 79
  CHECK(has(write_text(sheet), std::string(39, 'x') + "\n" + std::string(39, 'y') + "\n"));
}

TEST_CASE("a word longer than the line stands whole on a line of its own") {
  Sheet sheet;
  sheet.title = "Card";
  const std::string word(100, 'x');
  sheet.subtitle = "before " + word + " behind";
  CHECK(has(write_text(sheet), "before\n" + word + "\nbehind\n"));
}

TEST_CASE("letters of two bytes are counted once") {
  Sheet sheet;
  sheet.title = "Häute";
  CHECK(has(write_text(sheet), "Häute\n=====\n"));
}

TEST_CASE("cautions stand above the first step, and stops are written in capitals") {
  Sheet sheet;
  sheet.title = "Card";
  sheet.findings = {{Level::stop, "Do not."}, {Level::warn, "Mind."}, {Level::note, "Note."}};
  sheet.cautions = {"Goggles."};
  sheet.steps = {{"Mix.", {}}};
  const std::string text = write_text(sheet);
  CHECK(has(text, "  STOP  Do not.\n"));
  CHECK(has(text, "  WARN  Mind.\n"));
  CHECK(has(text, "  note  Note.\n"));
  CHECK(text.find("Goggles.") < text.find("Mix."));
  const std::string page = write_html(sheet, Paper::a4);
  CHECK(page.find("Goggles.") < page.find("Mix."));
}

TEST_CASE("on a page all five signs of markup are written out, wherever the text stands") {
  const std::string hostile = "<b>&\"'</b>";
  const std::string page = write_html(full_of(hostile), Paper::a4);
  CHECK_FALSE(has(page, hostile));
  CHECK_FALSE(has(page, "&\"'"));
  std::size_t times = 0;
  const std::string_view written = "&lt;b&gt;&amp;&quot;&#39;&lt;/b&gt;";
  for (std::size_t at = page.find(written); at != std::string::npos;
       at = page.find(written, at + 1))
    ++times;
  // Title twice, subtitle, two findings, caution, step and the four texts of its amount, two tables
  // of title, note, two columns and two cells, remark, source.
  CHECK(times == 2 + 1 + 2 + 1 + 1 + 4 + 2 * 6 + 1 + 1);
}

TEST_CASE("neither text nor page holds control characters of its input") {
  const Sheet sheet = full_of("a\x1b[31m\u009b2J\x07\r\nb");
  for (const std::string &text :
       {write_text(sheet), write_html(sheet, Paper::a4), write_html(sheet, Paper::letter)}) {
    CHECK(text.find('\x1b') == std::string::npos);
    CHECK(text.find('\x07') == std::string::npos);
    CHECK(text.find('\r') == std::string::npos);
    CHECK(text.find("\u009b") == std::string::npos);
  }
}

TEST_CASE("an empty sheet is still a whole page") {
  const std::string page = write_html({}, Paper::letter);
  CHECK(page.starts_with("<!DOCTYPE html>"));
  CHECK(page.ends_with("</html>\n"));
  CHECK(has(page, "@page{size:letter;"));
  CHECK_FALSE(has(page, "<h2>"));
}
