#include "files.hpp"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <memory>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace whittaw::app {

namespace {

std::string reason(int error) { return std::generic_category().message(error); }

/// Writes all of `text`, through interruptions and short writes. Gives errno, or 0.
int write_all(int file, const std::string &text) {
  std::size_t done = 0;
  while (done < text.size()) {
    const ssize_t count = ::write(file, text.data() + done, text.size() - done);
    if (count < 0) {
      if (errno == EINTR) continue;
      return errno;
    }
    done += static_cast<std::size_t>(count);
  }
  return 0;
}

Fault write_fault_of(const std::string &where, int error, Status status) {
  return {
      status, where, "cannot write: " + reason(error),
      "",     0,     "nothing was left half-written; choose another place with -o, or make room"};
}

std::optional<Fault> write_straight(const std::string &path, const std::string &text) {
  const int file = ::open(path.c_str(), O_WRONLY | O_CLOEXEC);
  if (file < 0) return write_fault_of(path, errno, Status::cannot_create);
  const int error = write_all(file, text);
  const int closing = ::close(file) == 0 ? 0 : errno;
  if (error != 0 || closing != 0) {
    auto fault = write_fault_of(path, error != 0 ? error : closing, Status::io_error);
    fault.remedy = "choose another place with -o";
    return fault;
  }
  return std::nullopt;
}

/// Where a link points to, so that the file behind it is replaced and not the link.
std::string behind_links(const std::string &path) {
  const std::unique_ptr<char, void (*)(void *)> real(::realpath(path.c_str(), nullptr), std::free);
  return real ? std::string(real.get()) : path;
}

std::optional<Fault> write_beside(const std::string &wanted, const std::string &text) {
  const std::string path = behind_links(wanted);
  struct stat old {};
  const bool replaces = ::stat(path.c_str(), &old) == 0;
  if (replaces && ::access(path.c_str(), W_OK) != 0)
    return write_fault_of(wanted, errno, Status::cannot_create);
  std::string beside = path + ".part-XXXXXX";
  const int file = ::mkstemp(beside.data());
  if (file < 0) return write_fault_of(wanted, errno, Status::cannot_create);
  int error = write_all(file, text);
  const mode_t mask = ::umask(0);
  ::umask(mask);
  const mode_t mode = replaces ? (old.st_mode & 07777) : (0666 & ~mask);
  if (error == 0 && ::fchmod(file, mode) != 0) error = errno;
  if (error == 0 && ::fsync(file) != 0) error = errno;
  if (::close(file) != 0 && error == 0) error = errno;
  if (error == 0 && ::rename(beside.c_str(), path.c_str()) != 0) error = errno;
  if (error != 0) {
    ::unlink(beside.c_str());
    return write_fault_of(wanted, error, Status::io_error);
  }
  return std::nullopt;
}

} // namespace

Outcome<std::string> read_file(const std::string &path) {
  const bool standard = path == "-";
  const std::string name = standard ? "standard input" : path;
  if (path.empty())
    return Fault{Status::no_input, "", "the file name is empty", "", 0, "name a file"};
  const int file = standard ? ::dup(STDIN_FILENO) : ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0)
    return Fault{Status::no_input,
                 name,
                 "cannot read: " + reason(errno),
                 "",
                 0,
                 "check the name and the folder"};
  std::string text;
  std::string block(std::size_t{1} << 16U, '\0');
  std::optional<Fault> fault;
  struct stat status {};
  if (::fstat(file, &status) == 0 && S_ISDIR(status.st_mode))
    fault = Fault{Status::no_input,     name, "is a folder, and a file is wanted", "", 0,
                  "name the file in it"};
  while (!fault) {
    const ssize_t count = ::read(file, block.data(), block.size());
    if (count == 0) break;
    if (count < 0) {
      if (errno == EINTR) continue;
      fault =
          Fault{Status::io_error, name, "cannot read: " + reason(errno), "", 0, "check the disk"};
      break;
    }
    text.append(block, 0, static_cast<std::size_t>(count));
    if (text.size() > largest_file)
      fault = Fault{Status::bad_data,
                    name,
                    "is larger than 32 MiB",
                    "",
                    0,
                    "give a file that a person wrote; a day of 100 000 hides is under 10 MiB"};
  }
  ::close(file);
  if (fault) return *fault;
  return text;
}

std::optional<Fault> refuse_overwriting(const std::optional<std::string> &output,
                                        const std::vector<std::string> &inputs) {
  struct stat wanted {};
  if (!output || ::stat(output->c_str(), &wanted) != 0 || !S_ISREG(wanted.st_mode))
    return std::nullopt;
  for (const auto &input : inputs) {
    struct stat read {};
    if (::stat(input.c_str(), &read) == 0 && read.st_dev == wanted.st_dev &&
        read.st_ino == wanted.st_ino)
      return Fault{Status::cannot_create,        *output, "is a file that was read", "", 0,
                   "choose another name with -o"};
  }
  return std::nullopt;
}

std::optional<Fault> write_output(const std::optional<std::string> &path, const std::string &text) {
  if (!path || *path == "-") {
    std::fflush(stdout);
    if (const int error = write_all(STDOUT_FILENO, text); error != 0) {
      auto fault = write_fault_of("standard output", error, Status::io_error);
      fault.remedy = "make room, or send the output elsewhere";
      return fault;
    }
    return std::nullopt;
  }
  struct stat status {};
  if (::lstat(path->c_str(), &status) == 0 && S_ISLNK(status.st_mode) &&
      ::stat(path->c_str(), &status) != 0)
    return write_fault_of(*path, errno, Status::cannot_create);
  if (path->empty())
    return Fault{Status::usage, "-o", "the file name is empty", "", 0, "name a file"};
  if (::stat(path->c_str(), &status) == 0) {
    if (S_ISDIR(status.st_mode)) return write_fault_of(*path, EISDIR, Status::cannot_create);
    if (!S_ISREG(status.st_mode)) return write_straight(*path, text);
  }
  return write_beside(*path, text);
}

} // namespace whittaw::app
