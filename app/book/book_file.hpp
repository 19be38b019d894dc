// The powder book on disk: a text file that is only ever appended to.
#pragma once

#include "../fault.hpp"

#include <whittaw/powder/book.hpp>

#include <cstdint>
#include <functional>
#include <set>
#include <string>
#include <vector>

namespace whittaw::app {

/// A block of the file that is no sound entry, or cannot be; the rest is read all the same.
struct DamagedEntry {
  std::uint32_t line = 0;
  std::string why;
};

struct BookReading {
  PowderBook book;
  std::vector<DamagedEntry> damaged; ///< balances are incomplete where there are any
  std::set<std::int64_t> undone;
  std::int64_t highest = 0;      ///< number of a damaged entry
  std::uint64_t sound_bytes = 0; ///< up to where the file holds whole blocks
  std::uint64_t torn_bytes = 0;  ///< of an unfinished last block, as a power cut leaves it
  std::uint32_t torn_line = 0;
};

/// Called for each entry in force, with the movement that it makes and the jars after it.
using EntryVisitor = std::function<void(const PowderEntry &, const Posting &, const PowderBook &)>;

/// Reads the book entry by entry, twice: first for what was undone. Memory does not grow with the
/// file. No file is an empty book.
Outcome<BookReading> read_book(const std::string &path, const EntryVisitor &visit);

/// Appends one entry: waits for the lock, reads the book, numbers the entry and tries it on the
/// jars, writes it with one call, flushes it to the disk and reads it back. An unfinished tail is
/// first moved to a file beside the book. On a fault the book is as it was. `said` gets what the
/// user should know besides.
Outcome<PowderEntry> append_entry(const std::string &path, PowderEntry entry,
                                  std::vector<std::string> &said);

/// The clock's time as the book writes it.
std::string time_now();

} // namespace whittaw::app
