#include "cli/commands.h"

#include "base/nearest.h"
#include "cli/files.h"
#include "cli/screen.h"
#include "cli/workbench.h"
#include "codec/answer.h"
#include "codec/job.h"
#include "codec/rules.h"
#include "drawing/svg.h"
#include "picture/place.h"
#include "tables/embedded.h"

#include <fmt/format.h>

#include <cstdio>
#include <cstdlib>

namespace toft::cli {

namespace {

void print(const std::string& text) { std::fwrite(text.data(), 1, text.size(), stdout); }
void complain(const std::string& text) { std::fwrite(text.data(), 1, text.size(), stderr); }

int fault_exit(const Faults& faults, bool json, const char* title) {
    if (json) {
        print(codec::write_faults(faults));
    } else {
        complain(std::string(title) + "\n" + faults_screen(faults));
    }
    return bad_input;
}

int answer_exit(const answer::Answer& answer) {
    if (answer.sound) return done;
    return answer::only_conditional(answer) ? conditional : no_sound_scheme;
}

/// Runs `work` on the tables; broken tables are the program's own fault.
template <class Work>
int with_bench(const Work& work) {
    auto bench = load_workbench();
    if (!bench) {
        complain("toft: its own tables are broken\n" + faults_screen(bench.error()));
        return program_fault;
    }
    return work(*bench);
}

/// Runs `work` on a job; a job at fault is said and nothing is worked out.
template <class Work>
int with_job(const std::string& path, bool json, const Work& work) {
    return with_bench([&](const Workbench& bench) {
        auto job = load_job(bench, path);
        if (!job) return fault_exit(job.error(), json, "the job cannot be designed as it stands:");
        return work(bench, *job);
    });
}

answer::Answer designed(const Workbench& bench, const site::Job& job, bool all) {
    return answer::design({bench.catalogue, bench.book, job, all, now_milliseconds});
}

/// The scheme of that key or rank among those shown, or null.
const answer::SchemeAnswer* pick(const answer::Answer& answer, const std::string& which) {
    for (const answer::SchemeAnswer& s : answer.schemes) {
        if (which.empty() || s.key == which || std::to_string(s.rank) == which) return &s;
    }
    return nullptr;
}

std::vector<std::string> keys_of(const answer::Answer& answer) {
    std::vector<std::string> keys;
    for (const answer::SchemeAnswer& s : answer.schemes) keys.push_back(s.key);
    return keys;
}

}  // namespace

int demo() {
    return with_bench([](const Workbench& bench) {
        auto job = codec::read_job(tables::embedded_text("examples/demo.json"), bench.catalogue);
        if (!job) return fault_exit(job.error(), false, "toft: its own demo job is at fault");
        const answer::Answer answer = designed(bench, *job, false);
        print("This is the demo job. For your own: toft design JOB.json (see toft --help)\n\n");
        print(design_screen(answer));
        auto written =
            write_output("out/demo.svg", drawing::to_svg(picture::place_picture(*job, answer, 0)));
        if (!written) return fault_exit(written.error(), false, "the picture was not written:");
        print(fmt::format("picture: {}\n", *written));
        return answer_exit(answer);
    });
}

int design(const DesignArguments& arguments) {
    return with_job(arguments.job, arguments.json, [&](const Workbench& bench, const site::Job& job) {
        const answer::Answer answer = designed(bench, job, arguments.all);
        print(arguments.json ? codec::write_answer(answer) : design_screen(answer));
        return answer_exit(answer);
    });
}

int explain(const ExplainArguments& arguments) {
    return with_job(arguments.job, arguments.json, [&](const Workbench& bench, const site::Job& job) {
        const answer::Answer answer = designed(bench, job, true);
        if (answer.schemes.empty()) {
            complain("no scheme is sound, so there is no figure to explain; toft design says why\n");
            return static_cast<int>(no_sound_scheme);
        }
        const answer::SchemeAnswer* scheme = pick(answer, arguments.scheme);
        if (!scheme) {
            const auto keys = keys_of(answer);
            return fault_exit({{"unknown-scheme", "", "no sound scheme has that key or rank",
                                nearest_word(arguments.scheme, keys), {}}},
                              arguments.json, "nothing to explain:");
        }
        const answer::Recorded recorded({bench.catalogue, bench.book, job}, scheme->scheme);
        if (arguments.name.empty()) {
            for (const std::string& name : recorded.names()) print(name + "\n");
            return static_cast<int>(done);
        }
        const auto working = recorded.working(arguments.name);
        if (!working) {
            const auto names = recorded.names();
            return fault_exit({{"unknown-figure", "", "there is no figure " + arguments.name,
                                nearest_word(arguments.name, names), names}},
                              arguments.json, "nothing to explain:");
        }
        print(arguments.json ? codec::write_working(*working, scheme->key)
                             : working_screen(*working, scheme->key));
        return static_cast<int>(done);
    });
}

int draw(const DrawArguments& arguments) {
    return with_job(arguments.job, false, [&](const Workbench& bench, const site::Job& job) {
        const answer::Answer answer = designed(bench, job, false);
        const auto index = static_cast<std::size_t>(arguments.rank - 1);
        if (!answer.schemes.empty() && index >= answer.schemes.size()) {
            return fault_exit({{"unknown-scheme", "",
                                fmt::format("there are {} schemes", answer.schemes.size()), "", {}}},
                              false, "nothing to draw:");
        }
        const std::string svg = drawing::to_svg(picture::place_picture(job, answer, index));
        if (arguments.out.empty()) {
            print(svg);
            return answer_exit(answer);
        }
        auto written = write_output(arguments.out, svg);
        if (!written) return fault_exit(written.error(), false, "the picture was not written:");
        complain(fmt::format("picture: {}\n", *written));
        return answer_exit(answer);
    });
}

int rules(bool json) {
    print(json ? codec::write_rules() : rules_screen());
    return done;
}

int sources() {
    return with_bench([](const Workbench& bench) {
        print(sources_screen(bench.catalogue));
        return static_cast<int>(done);
    });
}

int schema(const std::string& which) {
    const std::string_view text = tables::embedded_text("schema/" + which + ".json");
    if (text.empty()) {
        complain("toft: no such schema; there are job, answer and faults\n");
        return wrong_usage;
    }
    print(std::string(text));
    return done;
}

}  // namespace toft::cli
