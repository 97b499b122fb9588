#include "answer/levers.h"
#include "answer/unknowns.h"
#include "cli/command_parts.h"
#include "cli/commands.h"
#include "cli/progress.h"
#include "cli/screen.h"
#include "codec/levers.h"
#include "codec/unknowns.h"
#include "outlook/later_json.h"

#include <fmt/format.h>

#include <functional>

namespace toft::cli {

namespace {

/// Tells on that line how many ways to build several runs have been worked out.
std::function<void(long)> wholes_on(ProgressLine& line) {
    return [&line](long solved) {
        if (!line.due()) return;
        line.show(
            fmt::format("all runs worked out together {} times, {:.0f} s", solved, line.seconds()));
    };
}

int survey_exit(bool sound, bool on_conditions) {
    if (sound) return done;
    return on_conditions ? conditional : no_sound_scheme;
}

}  // namespace

int ask(const SurveyArguments& arguments) {
    return with_job(arguments.job, arguments.json,
                    [&](const Workbench& bench, const site::Job& job) {
                        answer::Question question{bench.catalogue, bench.book, job};
                        ProgressLine line;
                        question.told = wholes_on(line);
                        const auto said = answer::ask(question);
                        line.clear();
                        print(arguments.json ? codec::write_ask(said) : ask_screen(said));
                        return survey_exit(said.sound, said.conditional);
                    });
}

int levers(const SurveyArguments& arguments) {
    return with_job(arguments.job, arguments.json,
                    [&](const Workbench& bench, const site::Job& job) {
                        answer::Question question{bench.catalogue, bench.book, job};
                        ProgressLine line;
                        question.told = wholes_on(line);
                        const auto said = answer::levers(question);
                        line.clear();
                        print(arguments.json ? codec::write_levers(said) : levers_screen(said));
                        return survey_exit(said.sound, said.conditional);
                    });
}

int later(const SurveyArguments& arguments) {
    return with_job_of_one_run(
        arguments.job, arguments.json, [&](const Workbench& bench, const site::Job& job) {
            const auto said = outlook::later({bench.catalogue, bench.book, job});
            print(arguments.json ? outlook::write_later(said) : later_screen(said));
            return survey_exit(!said.scheme.empty(), false);
        });
}

}  // namespace toft::cli
