// Saves of a job against bare inserts of the same bytes with the same durability, in turn; and what
// merging adds.

#include "store/store.h"

#include <benchmark/benchmark.h>
#include <sqlite3.h>
#include <unistd.h>

#include <chrono>
#include <filesystem>
#include <fstream>
#include <string>

namespace toft::bench {
namespace {

const std::string& demo_text() {
    static const std::string text = [] {
        std::ifstream file(TOFT_SOURCE_DIR "/examples/demo.json", std::ios::binary);
        return std::string(std::istreambuf_iterator<char>(file), {});
    }();
    return text;
}

/// The demo job with one more fact, of a value never there before.
std::string with_figure(const std::string& key, int value) {
    const auto brace = demo_text().find('{');
    return demo_text().substr(0, brace + 1) + "\"" + key + "\": " + std::to_string(value) + "," +
           demo_text().substr(brace + 1);
}

/// On a disk, where the folder of temporary files lies on one; or in memory.
struct Folder {
    std::filesystem::path path;
    explicit Folder(bool on_disk) {
        const auto place =
            on_disk ? std::filesystem::temp_directory_path() : std::filesystem::path("/dev/shm");
        std::string name = (place / "toft-bench-XXXXXX").string();
        path = mkdtemp(name.data());
    }
    ~Folder() { std::filesystem::remove_all(path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
};

/// One table, one statement, a commit each.
class Plain {
public:
    explicit Plain(const std::string& path) {
        sqlite3_open(path.c_str(), &handle_);
        run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;"
            "CREATE TABLE job(number INTEGER PRIMARY KEY, text TEXT NOT NULL) STRICT");
        sqlite3_prepare_v2(handle_, "INSERT INTO job(text) VALUES(?)", -1, &insert_, nullptr);
    }
    ~Plain() {
        sqlite3_finalize(insert_);
        sqlite3_close(handle_);
    }
    Plain(const Plain&) = delete;
    Plain& operator=(const Plain&) = delete;

    bool insert(const std::string& text) {
        sqlite3_bind_text(insert_, 1, text.data(), static_cast<int>(text.size()), SQLITE_STATIC);
        const bool done = sqlite3_step(insert_) == SQLITE_DONE;
        sqlite3_reset(insert_);
        return done;
    }

private:
    void run(const char* sql) { sqlite3_exec(handle_, sql, nullptr, nullptr, nullptr); }

    sqlite3* handle_ = nullptr;
    sqlite3_stmt* insert_ = nullptr;
};

using Clock = std::chrono::steady_clock;

double seconds_since(Clock::time_point start) {
    return std::chrono::duration<double>(Clock::now() - start).count();
}

/// range(0): 1 on disk, 0 in memory. range(1): how many revisions the save begins behind.
void save_over_insert(benchmark::State& state) {
    const Folder folder(state.range(0) == 1);
    const long behind = static_cast<long>(state.range(1));
    auto store = store::open((folder.path / "toft.sqlite").string());
    Plain plain((folder.path / "plain.sqlite").string());
    if (!store || !store::create(*store, "a", demo_text(), {"1", "bench", ""})) {
        state.SkipWithError("no store could be made");
        return;
    }
    double ours = 0, bare = 0;
    long revision = 1;
    int value = 0;
    for (auto _ : state) {
        const long base = behind > 0 ? 1 : revision;
        if (behind > 0) {  // somebody else was quicker, with a fact of their own
            const auto other = store::save(*store, {"a", revision, with_figure("theirs", ++value)},
                                           {"1", "b", ""});
            if (other) revision = other->state.revision;
        }
        const std::string text = with_figure("ours", ++value);
        auto start = Clock::now();
        const auto saved = store::save(*store, {"a", base, text}, {"1", "bench", "one figure"});
        ours += seconds_since(start);
        start = Clock::now();
        const bool done = plain.insert(text);
        bare += seconds_since(start);
        if (!done || !saved || !saved->saved || saved->merged != (behind > 0)) {
            state.SkipWithError("a save or an insert failed");
            break;
        }
        revision = saved->state.revision;
    }
    state.counters["ratio"] = ours / bare;
    state.counters["saves_per_s"] = static_cast<double>(state.iterations()) / ours;
    state.counters["inserts_per_s"] = static_cast<double>(state.iterations()) / bare;
}
BENCHMARK(save_over_insert)
    ->ArgNames({"disk", "merged"})
    ->Args({1, 0})
    ->Args({0, 0})
    ->Args({1, 1})
    ->Args({0, 1})
    ->Iterations(300)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace toft::bench
