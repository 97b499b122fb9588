#pragma once
// What every command does before and after its work: reads the tables and the job, says what is at
// fault, prints.

#include "cli/commands.h"
#include "cli/screen.h"
#include "cli/workbench.h"
#include "codec/answer.h"

#include <cstdio>
#include <string>

namespace toft::cli {

inline void print(const std::string& text) { std::fwrite(text.data(), 1, text.size(), stdout); }
inline void complain(const std::string& text) { std::fwrite(text.data(), 1, text.size(), stderr); }

inline int fault_exit(const Faults& faults, bool json, const char* title) {
    if (json) {
        print(codec::write_faults(faults));
    } else {
        complain(std::string(title) + "\n" + faults_screen(faults));
    }
    return bad_input;
}

inline int answer_exit(const answer::Answer& answer) {
    if (answer.search.stopped) return stopped;
    if (answer.sound) return done;
    return answer::only_conditional(answer) ? conditional : no_sound_scheme;
}

/// The user's price book is the user's; broken tables are the program's own fault.
inline int bench_exit(const Faults& faults, bool json, bool own) {
    if (!own) return fault_exit(faults, json, "the price book cannot be used as it stands:");
    complain("toft: its own tables are broken\n" + faults_screen(faults));
    return program_fault;
}

/// Runs `work` on the tables and the price book in use.
template <class Work>
int with_bench(const Work& work, bool json = false) {
    auto bench = load_workbench();
    if (!bench) return bench_exit(bench.error(), json, prices_in_use().empty());
    return work(*bench);
}

/// Runs `work` on a job; a job at fault is said and nothing is worked out.
template <class Work>
int with_job(const std::string& path, bool json, const Work& work) {
    return with_bench(
        [&](const Workbench& bench) {
            auto job = load_job(bench, path);
            if (!job)
                return fault_exit(job.error(), json, "the job cannot be designed as it stands:");
            return work(bench, *job);
        },
        json);
}

/// The same for what is worked out for one run only: of several it would answer for the first as
/// though nothing were fed through its building.
template <class Work>
int with_job_of_one_run(const std::string& path, bool json, const Work& work) {
    return with_job(path, json, [&](const Workbench& bench, const site::Job& job) {
        if (job.runs.size() == 1) return work(bench, job);
        return fault_exit({{"several-runs",
                            "/runs",
                            "this is worked out for jobs of one run so far; ask it of a job with "
                            "that run alone, its building given the load of all behind it",
                            "",
                            {}}},
                          json, "nothing is worked out:");
    });
}

}  // namespace toft::cli
