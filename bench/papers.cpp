// Papers and drawings of the demo: a whole pack, a drawing, and the pages of a pack as PDF against
// librsvg's program on the same pages as SVG.

#include "../tests/print/fonts.h"
#include "demo.h"
#include "drawing/svg.h"
#include "gallery/pictures.h"
#include "pack/pack.h"
#include "page/pages.h"
#include "print/pdf.h"

#include <benchmark/benchmark.h>

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace toft::bench {
namespace {

constexpr const char* day = "2026-11-29";

using support::fonts;

const answer::Answer& designed() {
    static const answer::Answer answer =
        answer::design({demo().catalogue, demo().book, demo().job});
    return answer;
}

paper::Subject subject(const answer::Answer& answer) {
    paper::Subject made{demo().catalogue, demo().job, answer, 0, day};
    made.workings =
        paper::workings_of({demo().catalogue, demo().book, demo().job}, answer.schemes.front());
    return made;
}

std::vector<const paper::Kind*> all_kinds() {
    std::vector<const paper::Kind*> kinds;
    for (const paper::Kind& kind : paper::kinds()) kinds.push_back(&kind);
    return kinds;
}

/// From the job to the bytes of every file.
void job_to_pack(benchmark::State& state) {
    std::size_t pages = 0;
    for (auto _ : state) {
        const answer::Answer answer = answer::design({demo().catalogue, demo().book, demo().job});
        const auto pack = pack::pack_of(subject(answer), all_kinds(), fonts());
        if (!pack) {
            state.SkipWithError("no pack was written");
            return;
        }
        pages = pack->files.back().pages;
    }
    state.counters["pages"] = static_cast<double>(pages);
}
BENCHMARK(job_to_pack)->Unit(benchmark::kMillisecond);

/// One paper laid out, not yet printed.
void paper_laid_out(benchmark::State& state) {
    const paper::Kind& kind = paper::kinds()[static_cast<std::size_t>(state.range(0))];
    const paper::Subject made = subject(designed());
    std::size_t pages = 0;
    for (auto _ : state) pages = page::pages(kind.write(made)).size();
    state.SetLabel(kind.file);
    state.counters["pages"] = static_cast<double>(pages);
}
BENCHMARK(paper_laid_out)
    ->DenseRange(0, static_cast<int>(paper::kinds().size()) - 1)
    ->Unit(benchmark::kMillisecond);

/// One picture from the answer to its SVG.
void drawing_as_svg(benchmark::State& state) {
    const gallery::Picture& picture = gallery::pictures()[static_cast<std::size_t>(state.range(0))];
    std::size_t bytes = 0;
    for (auto _ : state) {
        bytes = drawing::to_svg(picture.draw({demo().catalogue, demo().job, designed(), 0})).size();
    }
    state.SetLabel(picture.name);
    state.counters["bytes"] = static_cast<double>(bytes);
}
BENCHMARK(drawing_as_svg)
    ->DenseRange(0, static_cast<int>(gallery::pictures().size()) - 1)
    ->Unit(benchmark::kMillisecond);

double seconds_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// The same pages as PDF by the program and by rsvg-convert, its start and files in its time.
void rsvg_over_to_pdf(benchmark::State& state) {
    const auto sheets = page::pages(paper::find_kind("design-record")->write(subject(designed())));
    const std::filesystem::path folder =
        std::filesystem::temp_directory_path() / "toft-bench-papers";
    std::filesystem::create_directories(folder);
    std::string command = "rsvg-convert -f pdf -o " + (folder / "all.pdf").string();
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        const auto path = folder / (std::to_string(1000 + i) + ".svg");
        std::ofstream(path) << drawing::to_svg(sheets[i]);
        command += " " + path.string();
    }
    double ours = 0, theirs = 0;
    for (auto _ : state) {
        auto start = std::chrono::steady_clock::now();
        const auto printed = print::to_pdf(sheets, fonts(), day);
        ours += seconds_since(start);
        start = std::chrono::steady_clock::now();
        const int code = std::system(command.c_str());
        theirs += seconds_since(start);
        if (!printed || code != 0) {
            state.SkipWithError("one of the two wrote no PDF");
            break;
        }
    }
    state.counters["ratio"] = theirs / ours;
    state.counters["pages"] = static_cast<double>(sheets.size());
    state.counters["ms_ours"] = 1000 * ours / static_cast<double>(state.iterations());
    std::filesystem::remove_all(folder);
}
BENCHMARK(rsvg_over_to_pdf)->Unit(benchmark::kMillisecond)->Iterations(3);

}  // namespace
}  // namespace toft::bench
