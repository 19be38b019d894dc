// The code under measurement, as two translation units offer it: the library with its units, and
// the same headers over plain doubles (see plain/).
#pragma once

#include <cstddef>
#include <memory>
#include <vector>

namespace bench {

/// One job, prepared outside the measured time.
class Job {
public:
  Job() = default;
  Job(const Job &) = delete;
  Job &operator=(const Job &) = delete;
  virtual ~Job() = default;
  /// What is measured. Gives a figure that depends on all of the work.
  virtual double run() const = 0;
  /// Every figure of the result in SI units, to compare the two.
  virtual std::vector<double> figures() const = 0;
};

struct Kernels {
  /// The whole batch computation on a day of so many mixed hides and a substituted shelf.
  std::unique_ptr<Job> (*batch)(std::size_t hides);
  /// Its arithmetic alone: laws of area, tapes, sums with spread, liquor; no text, no shelf.
  std::unique_ptr<Job> (*core)(std::size_t hides);
  /// Rounding the batch of such a day to scoops.
  std::unique_ptr<Job> (*scoops)(std::size_t hides);
};

extern const Kernels with_units;
extern const Kernels with_doubles;

} // namespace bench
