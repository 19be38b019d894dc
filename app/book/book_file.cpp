#include "book_file.hpp"

#include "entry_text.hpp"

#include <fmt/format.h>

#include <cerrno>
#include <charconv>
#include <chrono>
#include <ctime>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <system_error>
#include <thread>
#include <unistd.h>

namespace whittaw::app {

namespace {

/// Closes a file at the end of its scope, and with it the lock.
class OpenFile {
public:
  explicit OpenFile(int file) : file_(file) {}
  OpenFile(const OpenFile &) = delete;
  OpenFile &operator=(const OpenFile &) = delete;
  ~OpenFile() {
    if (file_ >= 0) ::close(file_);
  }
  [[nodiscard]] int get() const { return file_; }

private:
  int file_;
};

std::string reason(int error) { return std::generic_category().message(error); }

Fault book_fault(const std::string &path, Status status, std::string found, std::string remedy) {
  return {status, path, std::move(found), "", 0, std::move(remedy)};
}

/// A block that begins with [[entry]], its first line and byte; `whole` if a later block or its own
/// closing line shows that it was written to its end.
struct Block {
  std::string_view text;
  std::uint32_t line = 0;
  std::uint64_t at = 0;
};

/// Whether all of a text is blanks and comments, each line ended.
bool is_comment(std::string_view text) {
  if (!text.empty() && !text.ends_with('\n')) return false;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    const std::size_t first = text.find_first_not_of(" \t\r");
    if (first < end && text[first] != '#') return false;
    text.remove_prefix(end + 1);
  }
  return true;
}

/// Bytes of a block up to the end of its closing line, and of blanks and comments after it; 0 if it
/// has none.
std::size_t closed_bytes(std::string_view block) {
  const std::size_t closing = block.rfind("\nend");
  if (closing == std::string_view::npos) return 0;
  std::size_t end = block.find('\n', closing + 1);
  while (end != std::string_view::npos) {
    const std::size_t next = block.find('\n', end + 1);
    if (next == std::string_view::npos || !is_comment(block.substr(end + 1, next - end))) break;
    end = next;
  }
  return end == std::string_view::npos ? 0 : end + 1;
}

/// The number that a damaged block says it has, or 0.
std::int64_t number_in(std::string_view block) {
  std::int64_t number = 0;
  const std::size_t at = block.find("\nnumber = ");
  if (at != std::string_view::npos)
    std::from_chars(block.data() + at + 10, block.data() + block.size(), number);
  return number < 1'000'000'000'000 ? number : 0;
}

/// A stretch longer than this without an [[entry]] is no book.
constexpr std::size_t longest_block = std::size_t{1} << 20U;

struct BlockScan {
  std::uint64_t sound_bytes = 0;
  std::uint64_t torn_bytes = 0;
  std::uint32_t torn_line = 0;
};

/// Calls `visit` with each whole block of the first `size` bytes, reading the file in pieces.
template <class Visit>
Outcome<BlockScan> scan_blocks(int file, const std::string &path, std::uint64_t size, Visit visit) {
  constexpr std::string_view mark = "[[entry]]";
  std::string held; // from the start of the block at hand
  std::string piece(std::size_t{1} << 16U, '\0');
  std::uint64_t held_at = 0;
  std::uint32_t held_line = 1;
  std::uint64_t offset = 0;
  std::size_t searched = 0;
  bool stray = false;
  const auto give = [&](std::size_t length) {
    const std::string_view block(held.data(), length);
    if (block.starts_with(mark))
      visit(Block{block, held_line, held_at});
    else if (!is_comment(block))
      stray = true;
    held_line += static_cast<std::uint32_t>(std::count(block.begin(), block.end(), '\n'));
    held_at += length;
    held.erase(0, length);
    searched = 0;
  };
  while (true) {
    // No further than the file was long at first: another may be writing.
    const std::size_t wanted = std::min<std::uint64_t>(piece.size(), size - offset);
    const ssize_t got = ::pread(file, piece.data(), wanted, static_cast<off_t>(offset));
    if (got < 0 && errno == EINTR) continue;
    if (got < 0)
      return book_fault(path, Status::io_error, "cannot read: " + reason(errno), "check the disk");
    if (got == 0) break;
    held.append(piece, 0, static_cast<std::size_t>(got));
    offset += static_cast<std::uint64_t>(got);
    if (held_at == 0 && held.starts_with("\xEF\xBB\xBF")) {
      held.erase(0, 3);
      held_at = 3;
    }
    // The next block starts at the next mark at the beginning of a line.
    while (true) {
      const std::size_t next = held.find("\n[[entry]]", searched);
      if (next == std::string::npos) break;
      give(next + 1);
      if (stray)
        return book_fault(path, Status::bad_data,
                          "is no powder book: it does not start with an entry",
                          "name another file");
    }
    searched = held.size() > mark.size() ? held.size() - mark.size() : 0;
    if (held.size() > longest_block)
      return book_fault(path, Status::bad_data,
                        fmt::format("line {}: no entry for a megabyte", held_line),
                        "this is not a powder book, or it is badly damaged; mend it by hand");
  }
  BlockScan scan{held_at, 0, 0};
  if (held.empty()) return scan;
  if (!std::string_view(held).starts_with(mark)) {
    if (held_at == 0 && !is_comment(held) && !mark.starts_with(held))
      return book_fault(path, Status::bad_data,
                        "is no powder book: it does not start with an entry", "name another file");
    if (is_comment(held)) {
      scan.sound_bytes = held.size();
      return scan;
    }
  } else if (const std::size_t closed = closed_bytes(held); closed > 0) {
    scan.sound_bytes = held_at + closed;
    give(closed);
    if (held.empty()) return scan;
  }
  scan.torn_bytes = held.size();
  scan.torn_line = held_line;
  return scan;
}

Outcome<BookReading> read_open_book(int file, const std::string &path,
                                    const std::set<std::int64_t> &also_undone,
                                    const EntryVisitor &visit) {
  BookReading reading;
  reading.undone = also_undone;
  struct stat status {};
  if (::fstat(file, &status) != 0)
    return book_fault(path, Status::io_error, "cannot read: " + reason(errno), "check the disk");
  const auto size = static_cast<std::uint64_t>(status.st_size);
  const auto first = scan_blocks(file, path, size, [&](const Block &block) {
    if (block.text.find("undone") == std::string_view::npos) return;
    const auto entry = read_entry(block.text, block.line, path);
    if (entry && entry->deed == Deed::undone) reading.undone.insert(entry->undoes);
  });
  if (!first) return first.problem();
  const auto second = scan_blocks(file, path, size, [&](const Block &block) {
    const auto damage = [&](std::string why) {
      reading.damaged.push_back({block.line, std::move(why)});
    };
    const auto entry = read_entry(block.text, block.line, path);
    if (!entry) {
      reading.highest = std::max(reading.highest, number_in(block.text));
      damage(entry.problem().found + "; " + entry.problem().remedy);
      return;
    }
    if (entry->number <= reading.book.last_number) {
      damage(fmt::format("number {} does not follow {}: it stands twice or out of order",
                         entry->number, reading.book.last_number));
      return;
    }
    if (reading.undone.count(entry->number) > 0) {
      reading.book.last_number = entry->number;
      reading.book.last_at = std::max(reading.book.last_at, entry->at);
      return;
    }
    const auto posting = apply(reading.book, *entry);
    if (!posting) {
      reading.book.last_number = entry->number;
      damage(posting.problem().found);
      return;
    }
    if (visit) visit(*entry, *posting, reading.book);
  });
  if (!second) return second.problem();
  reading.sound_bytes = second->sound_bytes;
  reading.torn_bytes = second->torn_bytes;
  reading.torn_line = second->torn_line;
  return reading;
}

/// Waits for the lock for ten seconds.
std::optional<Fault> lock(int file, const std::string &path) {
  constexpr int tries = 1000;
  for (int i = 0; i < tries; ++i) {
    if (::flock(file, LOCK_EX | LOCK_NB) == 0) return std::nullopt;
    if (errno != EWOULDBLOCK && errno != EINTR)
      return book_fault(path, Status::io_error, "cannot lock: " + reason(errno), "check the disk");
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  }
  return book_fault(path, Status::busy, "another program is writing in the book",
                    "try again when it is done");
}

/// Opens and locks the book. An editor that saves by renaming may have put another file in its
/// place while the lock was waited for: then that one is taken.
Outcome<int> open_locked(const std::string &path) {
  constexpr int tries = 10;
  for (int i = 0; i < tries; ++i) {
    const int file = ::open(path.c_str(), O_RDWR | O_CREAT | O_APPEND | O_CLOEXEC, 0666);
    if (file < 0)
      return book_fault(path, Status::cannot_create, "cannot write: " + reason(errno),
                        "check the folder and its rights");
    if (auto fault = lock(file, path)) {
      ::close(file);
      return *fault;
    }
    struct stat held {};
    struct stat there {};
    if (::fstat(file, &held) == 0 && ::stat(path.c_str(), &there) == 0 &&
        held.st_dev == there.st_dev && held.st_ino == there.st_ino)
      return file;
    ::close(file);
  }
  return book_fault(path, Status::busy, "the book is being replaced again and again",
                    "close the editor and try again");
}

/// 0, or errno.
int write_at_end(int file, std::string_view text) {
  while (!text.empty()) {
    const ssize_t done = ::write(file, text.data(), text.size());
    if (done < 0 && errno == EINTR) continue;
    if (done < 0) return errno;
    text.remove_prefix(static_cast<std::size_t>(done));
  }
  return ::fsync(file) == 0 ? 0 : errno;
}

bool reads_back(int file, std::uint64_t at, std::string_view text) {
  std::string back(text.size(), '\0');
  std::size_t have = 0;
  while (have < back.size()) {
    const ssize_t got =
        ::pread(file, back.data() + have, back.size() - have, static_cast<off_t>(at + have));
    if (got <= 0) return false;
    have += static_cast<std::size_t>(got);
  }
  return back == text;
}

void sync_folder(const std::string &path) {
  const std::size_t slash = path.rfind('/');
  const std::string folder = slash == std::string::npos ? "." : path.substr(0, slash + 1);
  const OpenFile open(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (open.get() >= 0) ::fsync(open.get());
}

/// Copies the unfinished tail to a file beside the book, and only then cuts it off.
std::optional<Fault> put_tail_aside(int file, const std::string &path, const BookReading &reading,
                                    std::vector<std::string> &said) {
  std::string tail(reading.torn_bytes, '\0');
  const ssize_t got =
      ::pread(file, tail.data(), tail.size(), static_cast<off_t>(reading.sound_bytes));
  if (got != static_cast<ssize_t>(tail.size()))
    return book_fault(path, Status::io_error, "cannot read the unfinished last entry",
                      "check the disk");
  std::string aside = path + ".unfinished-XXXXXX";
  const OpenFile beside(::mkstemp(aside.data()));
  const int error = beside.get() < 0 ? errno : write_at_end(beside.get(), tail);
  if (error != 0) {
    if (beside.get() >= 0) ::unlink(aside.c_str());
    return book_fault(aside, Status::io_error, "cannot write: " + reason(error), "make room");
  }
  sync_folder(path);
  if (::ftruncate(file, static_cast<off_t>(reading.sound_bytes)) != 0 || ::fsync(file) != 0)
    return book_fault(path, Status::io_error, "cannot cut: " + reason(errno), "check the disk");
  said.push_back(fmt::format("{}:{}: the last entry was not finished, as after a power cut; it was "
                             "moved to {}, look whether it is to be written again",
                             path, reading.torn_line, aside));
  return std::nullopt;
}

std::optional<Fault> check_undo(int file, const std::string &path, const BookReading &reading,
                                const PowderEntry &entry) {
  const auto refuse = [&](std::string found) {
    return book_fault(path, Status::bad_data, std::move(found), "see whittaw powder history");
  };
  if (entry.undoes < 1 || entry.undoes > reading.book.last_number)
    return refuse(fmt::format("there is no entry {}", entry.undoes));
  if (reading.undone.count(entry.undoes) > 0)
    return refuse(fmt::format("entry {} is undone already", entry.undoes));
  bool is_undo = false;
  bool there = false;
  const auto seen = read_open_book(
      file, path, {}, [&](const PowderEntry &each, const Posting &, const PowderBook &) {
        if (each.number != entry.undoes) return;
        there = true;
        is_undo = each.deed == Deed::undone;
      });
  if (!seen) return seen.problem();
  if (!there) return refuse(fmt::format("entry {} is damaged or not in force", entry.undoes));
  if (is_undo) return refuse(fmt::format("entry {} is itself an undoing", entry.undoes));
  const auto without = read_open_book(file, path, {entry.undoes}, {});
  if (!without) return without.problem();
  if (without->damaged.size() > reading.damaged.size())
    return refuse(fmt::format("without entry {}, line {} could not be: {}", entry.undoes,
                              without->damaged.back().line, without->damaged.back().why));
  return std::nullopt;
}

} // namespace

std::string time_now() {
  const std::time_t now = std::time(nullptr);
  std::tm utc{};
  ::gmtime_r(&now, &utc);
  return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}Z", utc.tm_year + 1900, utc.tm_mon + 1,
                     utc.tm_mday, utc.tm_hour, utc.tm_min, utc.tm_sec);
}

Outcome<BookReading> read_book(const std::string &path, const EntryVisitor &visit) {
  const OpenFile file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (file.get() < 0) {
    if (errno == ENOENT) return BookReading{};
    return book_fault(path, Status::no_input, "cannot read: " + reason(errno),
                      "check the name and the folder");
  }
  struct stat status {};
  if (::fstat(file.get(), &status) == 0 && S_ISDIR(status.st_mode))
    return book_fault(path, Status::no_input, "is a folder, and a book is wanted",
                      "name the file in it");
  return read_open_book(file.get(), path, {}, visit);
}

Outcome<PowderEntry> append_entry(const std::string &path, PowderEntry entry,
                                  std::vector<std::string> &said) {
  if (::access(path.c_str(), F_OK) != 0 && errno == ENOENT) {
    PowderBook none;
    if (entry.deed == Deed::undone)
      return book_fault(path, Status::no_input, "there is no book here", "name it with --book");
    if (const auto tried = apply(none, entry); !tried)
      return book_fault(path, Status::bad_data, tried.problem().found, tried.problem().remedy);
  }
  const auto opened = open_locked(path);
  if (!opened) return opened.problem();
  const OpenFile file(*opened);
  auto reading = read_open_book(file.get(), path, {}, {});
  if (!reading) return reading.problem();
  PowderBook &book = reading.value().book;

  entry.number = std::max(book.last_number, reading->highest) + 1;
  entry.at = time_now();
  if (entry.at < book.last_at) {
    said.push_back(fmt::format("the clock says {}, before the last entry: that one's time is taken",
                               entry.at));
    entry.at = book.last_at;
  }
  if (entry.deed == Deed::undone)
    if (auto fault = check_undo(file.get(), path, *reading, entry)) return *fault;
  if (const auto tried = apply(book, entry); !tried)
    return book_fault(path, Status::bad_data, tried.problem().found, tried.problem().remedy);
  const std::string text = write_entry(entry);
  if (const auto back = read_entry(text, 1, path); !back)
    return book_fault(path, Status::bad_data,
                      "this entry would not read back: " + back.problem().found,
                      back.problem().remedy);
  if (reading->torn_bytes > 0)
    if (auto fault = put_tail_aside(file.get(), path, *reading, said)) return *fault;

  const std::uint64_t end = reading->sound_bytes;
  const int error = write_at_end(file.get(), text);
  if (error != 0 || !reads_back(file.get(), end, text)) {
    const bool mended =
        ::ftruncate(file.get(), static_cast<off_t>(end)) == 0 && ::fsync(file.get()) == 0;
    return book_fault(path, Status::io_error,
                      "cannot write: " +
                          (error != 0 ? reason(error) : std::string("it does not read back")),
                      mended ? "the book is as it was; make room and try again"
                             : "check the disk; the last entry may be unfinished");
  }
  if (end == 0) sync_folder(path);
  return entry;
}

} // namespace whittaw::app
