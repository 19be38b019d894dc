// Any text as a day: it is read and worked out, or refused.
#include "readers/day_reader.hpp"

#include <whittaw/paste/batch.hpp>

#include <cstdint>
#include <cstdlib>
#include <sys/mman.h>
#include <unistd.h>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size) {
  static const int file = ::memfd_create("day", 0);
  static const std::string path = "/proc/self/fd/" + std::to_string(file);
  if (file < 0 || ::ftruncate(file, 0) != 0 ||
      ::pwrite(file, data, size, 0) != static_cast<ssize_t>(size))
    std::abort();
  const auto day = whittaw::app::read_day(path, std::nullopt);
  if (day) (void)whittaw::make_batch(day->day);
  return 0;
}
