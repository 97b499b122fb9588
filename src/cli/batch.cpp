#include "cli/answers_file.h"
#include "cli/commands.h"
#include "cli/in_order.h"
#include "cli/interrupt.h"
#include "cli/lines.h"
#include "cli/progress.h"
#include "cli/screen.h"
#include "cli/workbench.h"
#include "codec/answer.h"
#include "codec/job.h"

#include <fmt/format.h>

#include <algorithm>
#include <atomic>
#include <cstdio>
#include <exception>

#include <sched.h>
#include <unistd.h>

namespace toft::cli {

namespace {

/// Cores that this process may use.
unsigned cores() {
    cpu_set_t allowed;
    CPU_ZERO(&allowed);
    if (sched_getaffinity(0, sizeof allowed, &allowed) != 0) return 1;
    return static_cast<unsigned>(std::max(CPU_COUNT(&allowed), 1));
}

int refused(const Faults& faults, ExitCode code = bad_input) {
    std::fputs(("the batch cannot be run:\n" + faults_screen(faults)).c_str(), stderr);
    return code;
}

std::string faults_line(const Faults& faults) {
    return codec::write_faults(faults, codec::Layout::one_line);
}

class Batch {
public:
    Batch(const BatchArguments& arguments, const Workbench& bench, LineReader jobs,
          AnswersFile answers)
        : arguments_(arguments),
          bench_(bench),
          jobs_(std::move(jobs)),
          answers_(std::move(answers)) {}

    int run() {
        const long before = answers_.lines_before();
        if (before > 0 && !skip(before)) return code();
        InOrder order;
        order.threads = arguments_.threads > 0 ? arguments_.threads : cores();
        order.next = [this](std::string& line) { return next(line); };
        order.work = [this](const std::string& line) { return answered(line); };
        order.put = [this](const std::string& line) { return put(line); };
        order.stop = Interrupt::heard;
        written_ = cli::run(order);
        progress_.clear();
        tell(before);
        return code();
    }

private:
    bool next(std::string& line) {
        const LineReader::Got got = jobs_.next(line);
        broken_ = got == LineReader::Got::broken;
        ended_ = got == LineReader::Got::end;
        return got == LineReader::Got::line;
    }

    /// Jobs that have their answers already.
    bool skip(long count) {
        std::string line;
        for (long i = 0; i < count; ++i) {
            if (next(line)) continue;
            too_few_ = ended_;
            tell(count);
            return false;
        }
        return true;
    }

    std::string answered(const std::string& line) {
        try {
            if (line.find_first_not_of(" \t") == std::string::npos) {
                return at_fault({{"missing", "", "the line is empty; each holds one job", "", {}}});
            }
            const auto job = codec::read_job(line, bench_.catalogue);
            if (!job) return at_fault(job.error());
            answer::Question question{bench_.catalogue, bench_.book, *job};
            question.most = arguments_.schemes;
            return codec::write_answer(answer::design(question), codec::Layout::one_line);
        } catch (const std::exception& error) {
            ++program_faults_;
            return at_fault({{"program", "", error.what(), "", {}}});
        }
    }

    std::string at_fault(const Faults& faults) {
        ++faults_;
        return faults_line(faults);
    }

    bool put(const std::string& line) {
        if (!answers_.append(line)) return false;
        ++put_;
        if (progress_.due() && isatty(STDOUT_FILENO) == 0) {
            progress_.show(fmt::format("{} jobs answered, {:.1f} a second; Ctrl-C stops", put_,
                                       static_cast<double>(put_) / progress_.seconds()));
        }
        return true;
    }

    /// Says what a caller must know beside the answers; nothing when all went its usual way.
    void tell(long before) const {
        const std::string again =
            arguments_.out.empty() ? "" : "; the same command with --resume goes on";
        if (before > 0) fmt::print(stderr, "toft: {} lines were answered already\n", before);
        if (faults_ > 0) {
            fmt::print(stderr, "toft: {} of {} lines are at fault: their answers say why\n",
                       faults_.load(), put_);
        }
        if (too_few_) {
            fmt::print(stderr, "toft: {} holds more answers than there are jobs\n", arguments_.out);
        } else if (!written_) {
            fmt::print(stderr, "toft: no more answers can be written{}\n", again);
        } else if (broken_) {
            fmt::print(stderr, "toft: no more jobs can be read{}\n", again);
        } else if (!ended_) {
            fmt::print(stderr, "toft: stopped after {} lines{}\n", before + put_, again);
        }
    }

    int code() const {
        if (program_faults_ > 0) return program_fault;
        if (too_few_ || broken_ || !written_) return bad_input;
        return ended_ ? done : stopped;
    }

    const BatchArguments& arguments_;
    const Workbench& bench_;
    LineReader jobs_;
    AnswersFile answers_;
    ProgressLine progress_;
    std::atomic<long> faults_{0}, program_faults_{0};
    long put_ = 0;
    bool ended_ = false;    ///< all jobs were read
    bool broken_ = false;   ///< jobs cannot be read
    bool too_few_ = false;  ///< for the answers there were
    bool written_ = true;
};

}  // namespace

int batch(const BatchArguments& arguments) {
    const Interrupt interrupt;
    const auto bench = load_workbench();
    if (!bench) {
        return refused(bench.error(), prices_in_use().empty() ? program_fault : bad_input);
    }
    auto jobs = LineReader::open(arguments.jobs);
    if (!jobs) return refused(jobs.error());
    auto answers = AnswersFile::open(arguments.out, arguments.resume, jobs->descriptor());
    if (!answers) return refused(answers.error());
    return Batch(arguments, *bench, std::move(*jobs), std::move(*answers)).run();
}

}  // namespace toft::cli
