// Many jobs by one batch: jobs a second, the cost of a start of the program for each instead, and
// the memory that few and many lines take.

#include "../tests/support/examples.h"

#include <benchmark/benchmark.h>
#include <nlohmann/json.hpp>

#include <sys/resource.h>
#include <sys/wait.h>

#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include <fcntl.h>
#include <unistd.h>

namespace toft::bench {
namespace {

struct Ran {
    double seconds = 0;
    double peak_mb = 0;
    bool well = false;
};

/// Runs the program with nothing shown.
Ran ran(const std::vector<std::string>& arguments) {
    std::vector<std::string> words{TOFT_BINARY};
    words.insert(words.end(), arguments.begin(), arguments.end());
    std::vector<char*> pointers;
    for (std::string& word : words) pointers.push_back(word.data());
    pointers.push_back(nullptr);
    const auto start = std::chrono::steady_clock::now();
    const pid_t id = fork();
    if (id == 0) {
        const int nothing = open("/dev/null", O_RDWR);
        dup2(nothing, STDOUT_FILENO);
        dup2(nothing, STDERR_FILENO);
        execv(pointers.front(), pointers.data());
        _exit(127);
    }
    int status = 0;
    rusage used{};
    wait4(id, &status, 0, &used);
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    return {took.count(), static_cast<double>(used.ru_maxrss) / 1024,
            WIFEXITED(status) && WEXITSTATUS(status) == 0};
}

/// Two jobs in turn, so many lines in all; gone with it.
class Jobs {
public:
    explicit Jobs(long lines) {
        std::string name = (std::filesystem::temp_directory_path() / "toft-bench-XXXXXX").string();
        const int made = mkstemp(name.data());
        if (made >= 0) close(made);
        path_ = name;
        std::ofstream out(path_);
        for (long i = 0; i < lines; ++i) {
            const std::string text = support::project_text(job(i));
            out << nlohmann::ordered_json::parse(text).dump() << '\n';
        }
    }
    ~Jobs() { std::filesystem::remove(path_); }
    Jobs(const Jobs&) = delete;
    Jobs& operator=(const Jobs&) = delete;

    const std::string& path() const { return path_; }

    static std::string job(long line) {
        return line % 2 == 0 ? "examples/tt-shed.json" : "examples/demo.json";
    }

private:
    std::string path_;
};

Ran batch(const Jobs& jobs, long threads, long schemes = 1) {
    return ran({"batch", jobs.path(), "--schemes", std::to_string(schemes), "-t",
                std::to_string(threads)});
}

void batch(benchmark::State& state) {
    constexpr long lines = 200;
    const Jobs jobs(lines);
    for (auto _ : state) {
        const Ran once = batch(jobs, state.range(0));
        if (!once.well) state.SkipWithError("the batch did not end well");
        state.SetIterationTime(once.seconds);
    }
    state.SetItemsProcessed(state.iterations() * lines);
}
BENCHMARK(batch)->ArgName("threads")->DenseRange(1, 2)->UseManualTime()->Unit(
    benchmark::kMillisecond);

void design_once_a_job_over_batch(benchmark::State& state) {
    constexpr long lines = 40;
    const Jobs jobs(lines);
    double together = 0;
    double alone = 0;
    for (auto _ : state) {
        together += batch(jobs, 1, 24).seconds;  // as many as a design lists
        double starts = 0;
        for (long i = 0; i < lines; ++i) {
            const std::string job = std::string(TOFT_SOURCE_DIR) + "/" + Jobs::job(i);
            const Ran once = ran({"design", job, "--json"});
            if (!once.well) state.SkipWithError("a design did not end well");
            starts += once.seconds;
        }
        alone += starts;
        state.SetIterationTime(starts);
    }
    state.counters["ratio"] = alone / together;
}
BENCHMARK(design_once_a_job_over_batch)
    ->UseManualTime()
    ->Iterations(3)
    ->Unit(benchmark::kMillisecond);

void peak_memory(benchmark::State& state) {
    const Jobs jobs(state.range(0));
    for (auto _ : state) {
        const Ran once = batch(jobs, 2);
        if (!once.well) state.SkipWithError("the batch did not end well");
        state.SetIterationTime(once.seconds);
        state.counters["peak_mb"] = once.peak_mb;
    }
}
BENCHMARK(peak_memory)
    ->ArgName("lines")
    ->RangeMultiplier(10)
    ->Range(100, 10000)
    ->UseManualTime()
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace toft::bench
