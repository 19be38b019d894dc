// What the units cost: the library against the same headers over plain doubles, in one run with
// the two interleaved. After the table it prints one line a job:
//   ratio batch/30 1.003 (median of 60) 1.001 (least of 60)
// and exits with 1 if the two give different figures.
#include "kernels.hpp"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace {

using Maker = std::unique_ptr<bench::Job> (*)(std::size_t);

void measure(benchmark::State &state, Maker maker) {
  const auto hides = static_cast<std::size_t>(state.range(0));
  const auto job = maker(hides);
  for (auto _ : state) benchmark::DoNotOptimize(job->run());
  state.SetComplexityN(state.range(0));
}

struct Comparison {
  const char *name;
  Maker units;
  Maker doubles;
  int hides;
};

const Comparison comparisons[] = {
    {"batch", bench::with_units.batch, bench::with_doubles.batch, 30},
    {"core", bench::with_units.core, bench::with_doubles.core, 300},
    {"scoops", bench::with_units.scoops, bench::with_doubles.scoops, 2},
};

/// True if both give the same figures, to the rounding of a last place or two.
bool same_figures(const Comparison &pair) {
  const auto hides = static_cast<std::size_t>(pair.hides);
  const auto with_units = pair.units(hides)->figures();
  const auto with_doubles = pair.doubles(hides)->figures();
  double worst = with_units.size() == with_doubles.size() ? 0.0 : 1.0;
  for (std::size_t i = 0; i < std::min(with_units.size(), with_doubles.size()); ++i) {
    const double size = std::max(std::abs(with_units[i]), std::abs(with_doubles[i]));
    if (size > 0.0) worst = std::max(worst, std::abs(with_units[i] - with_doubles[i]) / size);
  }
  const bool same = worst <= 1e-13; // false for nan
  std::printf("figures %s/%d: %zu compared, largest relative difference %.1e, %s\n", pair.name,
              pair.hides, with_units.size(), worst, same ? "same" : "DIFFERENT");
  return same;
}

/// Prints the usual table and keeps the time of each repetition.
class Collector : public benchmark::ConsoleReporter {
public:
  Collector() : ConsoleReporter(OO_Tabular) {}

  void ReportRuns(const std::vector<Run> &runs) override {
    std::vector<Run> shown;
    for (const auto &run : runs) {
      if (run.run_type == Run::RT_Iteration && run.repetitions > 1)
        times_[run.benchmark_name()].push_back(run.GetAdjustedCPUTime());
      else
        shown.push_back(run);
    }
    if (!shown.empty()) ConsoleReporter::ReportRuns(shown);
  }

  void print_ratio(const Comparison &pair) const {
    const std::string job = pair.name + ("/" + std::to_string(pair.hides));
    const auto with_units = times(std::string("units/") + job);
    const auto with_doubles = times(std::string("doubles/") + job);
    if (with_units.empty() || with_doubles.empty()) return;
    std::printf("ratio %s %.3f (median of %zu) %.3f (least of %zu)\n", job.c_str(),
                median(with_units) / median(with_doubles), with_units.size(),
                with_units.front() / with_doubles.front(), with_units.size());
  }

private:
  std::map<std::string, std::vector<double>> times_;

  /// Sorted; the benchmark's name goes on with its repetitions.
  std::vector<double> times(const std::string &name) const {
    for (const auto &[full, list] : times_) {
      if (full != name && !full.starts_with(name + "/")) continue;
      auto sorted = list;
      std::sort(sorted.begin(), sorted.end());
      return sorted;
    }
    return {};
  }
  static double median(const std::vector<double> &sorted) {
    const std::size_t half = sorted.size() / 2;
    return sorted.size() % 2 ? sorted[half] : 0.5 * (sorted[half - 1] + sorted[half]);
  }
};

} // namespace

int main(int argc, char **argv) {
  // Interleaved unless the caller says otherwise: the machine's drift then meets both alike.
  std::vector<char *> arguments(argv, argv + argc);
  std::string interleave = "--benchmark_enable_random_interleaving=true";
  arguments.insert(arguments.begin() + (argc > 0 ? 1 : 0), interleave.data());
  int count = static_cast<int>(arguments.size());
  benchmark::Initialize(&count, arguments.data());
  if (benchmark::ReportUnrecognizedArguments(count, arguments.data())) return 64;

  bool same = true;
  for (const auto &pair : comparisons) {
    same = same_figures(pair) && same;
    for (const bool units : {true, false}) {
      const std::string name = std::string(units ? "units/" : "doubles/") + pair.name;
      benchmark::RegisterBenchmark(name.c_str(), measure, units ? pair.units : pair.doubles)
          ->Arg(pair.hides)
          ->MinTime(0.02)
          ->Repetitions(60)
          ->ReportAggregatesOnly(false);
    }
  }
  benchmark::RegisterBenchmark("growth/batch", measure, bench::with_units.batch)
      ->RangeMultiplier(10)
      ->Range(100, 100'000)
      ->Unit(benchmark::kMillisecond)
      ->Complexity();

  Collector collector;
  benchmark::RunSpecifiedBenchmarks(&collector);
  for (const auto &pair : comparisons) collector.print_ratio(pair);
  benchmark::Shutdown();
  return same ? 0 : 1;
}
