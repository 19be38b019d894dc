// Any text as an entry of the powder book: it is read or refused, and what is read can be written
// and read again, to the same text.
#include "book/entry_text.hpp"

#include <cstdint>
#include <cstdio>
#include <cstdlib>

namespace {

void wrong(const char *what, const std::string &text) {
  std::fprintf(stderr, "%s:\n%s\n", what, text.c_str());
  std::abort();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size) {
  using namespace whittaw;
  // The reader of the book gives it blocks that begin with this line.
  std::string block = "[[entry]]\n";
  block.append(data, data + size);
  const auto entry = app::read_entry(block, 1, "book.toml");
  if (!entry) return 0;
  const std::string text = app::write_entry(*entry);
  const auto again = app::read_entry(text, 1, "book.toml");
  // A mass below the milligrams of the book is refused before it is written.
  if (!again && count(entry->mass, gram) > 0.0 && count(entry->mass, gram) < 0.0005) return 0;
  if (!again) wrong(again.problem().found.c_str(), text);
  if (app::write_entry(*again) != text) wrong("reads back as another entry", text);
  PowderBook book;
  if (const auto posting = apply(book, *entry); posting)
    for (const std::int64_t micro : posting->contents.micro)
      if (micro < 0) wrong("moves less than nothing", text);
  return 0;
}
