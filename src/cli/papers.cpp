#include "answer/answer.h"
#include "base/dates.h"
#include "cli/command_parts.h"
#include "cli/commands.h"
#include "cli/files.h"
#include "cli/picture_file.h"
#include "cli/progress.h"
#include "codec/job.h"
#include "drawing/utf8.h"
#include "pack/lists.h"
#include "pack/pack.h"
#include "pocket/pocket_page.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::cli {

namespace {

bool wants(const PapersArguments& arguments, const char* kind) {
    return arguments.only.empty() ||
           std::find(arguments.only.begin(), arguments.only.end(), kind) != arguments.only.end();
}

std::vector<const paper::Kind*> wanted(const PapersArguments& arguments, bool scheme) {
    std::vector<const paper::Kind*> all;
    for (const paper::Kind& kind : paper::kinds()) {
        if (wants(arguments, kind.file) && (scheme || kind.without_scheme)) all.push_back(&kind);
    }
    return all;
}

int write_all(const std::string& folder, const pack::Pack& pack) {
    for (const pack::File& file : pack.files) {
        auto written = write_output(folder + "/" + file.name, file.bytes);
        if (!written) return fault_exit(written.error(), false, "the papers were not written:");
        const std::string pages =
            file.pages ? fmt::format(" ({} page{})", file.pages, file.pages == 1 ? "" : "s") : "";
        complain(fmt::format("{}: {}{}\n", file.pages ? "paper" : "file", *written, pages));
    }
    if (!pack.missing.empty()) {
        complain(fmt::format("the font has no letters for {}; they are shown as \uFFFD\n",
                             drawing::to_utf8(pack.missing)));
    }
    return done;
}

/// What goes with the papers that were asked for; false, with a complaint, where it cannot be made.
bool add_files(pack::Pack& pack, const PapersArguments& arguments, const paper::Subject& subject) {
    const auto add = [&pack](Outcome<std::vector<pack::File>> files) {
        if (!files) {
            fault_exit(files.error(), false, "the papers were not written:");
            return false;
        }
        for (pack::File& file : *files) pack.files.push_back(std::move(file));
        return true;
    };
    const auto prices = arguments.list_prices ? ware::Prices::with : ware::Prices::without;
    return (!wants(arguments, "materials") || add(pack::lists_of(subject, prices))) &&
           (!wants(arguments, "ground-sheet") || add(pack::drawings_of(subject)));
}

answer::Answer watched_design(answer::Question question) {
    Watch watch;
    question.milliseconds = now_milliseconds;
    question.go_on = [&watch](const answer::Progress& progress) {
        return watch.goes_on([&] { return progress_words(progress); });
    };
    answer::Answer answer = answer::design(question);
    watch.end();
    return answer;
}

}  // namespace

int papers(const PapersArguments& arguments) {
    if (arguments.folder.empty()) {
        complain("toft: --out names the folder that the papers are written into\n");
        return wrong_usage;
    }
    return with_job(arguments.job, false, [&](const Workbench& bench, const site::Job& job) {
        if (!arguments.date.empty() && days_after(arguments.date, 0).empty()) {
            return fault_exit({{"date",
                                "--date",
                                fmt::format("\"{}\" is no day; write 2026-11-25", arguments.date),
                                "",
                                {}}},
                              false, "the papers were not written:");
        }
        const auto fonts = installed_fonts();
        if (!fonts) return fault_exit(fonts.error(), false, "the papers were not written:");
        const answer::Question question{bench.catalogue, bench.book, job};
        const answer::Answer answer = watched_design(question);
        if (answer.search.stopped) {
            complain("stopped before it was through: no paper is written\n");
            return static_cast<int>(stopped);
        }
        const auto index = static_cast<std::size_t>(arguments.rank - 1);
        const bool scheme = index < answer.schemes.size();
        if (!scheme && !answer.schemes.empty()) {
            return fault_exit({{"unknown-scheme",
                                "--rank",
                                fmt::format("there are {} schemes", answer.schemes.size()),
                                "",
                                {}}},
                              false, "nothing to write:");
        }
        const auto kinds = wanted(arguments, scheme);
        if (!scheme) {
            complain(
                "no scheme is sound: only papers that can do without one are written (toft design "
                "says why)\n");
        }
        paper::Subject subject{bench.catalogue, job, answer, index,
                               arguments.date.empty() ? today() : arguments.date};
        if (scheme) subject.workings = paper::workings_of(question, answer.schemes[index]);
        if (kinds.empty()) return answer_exit(answer);
        auto pack = pack::pack_of(subject, kinds, *fonts);
        if (!pack) return fault_exit(pack.error(), false, "the papers were not written:");
        if (scheme && !add_files(*pack, arguments, subject)) return static_cast<int>(bad_input);
        const int code = write_all(arguments.folder, *pack);
        if (code != done) return code;
        const bool open = scheme && !answer.schemes[index].conditional_on.empty();
        return open ? static_cast<int>(conditional) : answer_exit(answer);
    });
}

int pocket(const PocketArguments& arguments) {
    const auto refused = [](const Faults& faults) {
        return fault_exit(faults, false, "the page was not written:");
    };
    return with_bench([&](const Workbench& bench) {
        const auto text = read_input(arguments.job);
        if (!text) return refused(text.error());
        const auto job = codec::read_job(*text, bench.catalogue);
        if (!job) return refused(job.error());
        const std::string page = pocket::pocket_page(server::page_files(), *text);
        if (page.empty()) {
            complain("toft: this build carries no page\n");
            return static_cast<int>(program_fault);
        }
        const auto written = write_output(arguments.out, page);
        if (!written) return refused(written.error());
        complain(fmt::format("page: {} ({:.1f} MB)\n", *written,
                             static_cast<double>(page.size()) / 1e6));
        return static_cast<int>(done);
    });
}

}  // namespace toft::cli
