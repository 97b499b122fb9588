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

/// Tells how many ways to build several runs have been worked out, and stops when asked to.
std::function<bool(long)> watched(Watch& watch) {
    return [&watch](long solved) {
        return watch.goes_on([solved] {
            return solved > 0 ? fmt::format("all runs worked out together {} times", solved)
                              : std::string("looking at what is not known");
        });
    };
}

int survey_exit(bool sound, bool on_conditions, bool was_stopped) {
    if (was_stopped) return stopped;
    if (sound) return done;
    return on_conditions ? conditional : no_sound_scheme;
}

/// Asks that of a job and prints what is said, in words or as JSON.
template <class Ask, class Write, class Screen>
int surveyed(const SurveyArguments& arguments, const Ask& ask, const Write& write,
             const Screen& screen) {
    return with_job(arguments.job, arguments.json,
                    [&](const Workbench& bench, const site::Job& job) {
                        answer::Question question{bench.catalogue, bench.book, job};
                        Watch watch;
                        question.told = watched(watch);
                        const auto said = ask(question);
                        watch.end();
                        print(arguments.json ? write(said) : screen(said));
                        return survey_exit(said.sound, said.conditional, said.stopped);
                    });
}

}  // namespace

int ask(const SurveyArguments& arguments) {
    return surveyed(arguments, answer::ask, codec::write_ask, ask_screen);
}

int levers(const SurveyArguments& arguments) {
    return surveyed(arguments, answer::levers, codec::write_levers, levers_screen);
}

int later(const SurveyArguments& arguments) {
    return with_job_of_one_run(
        arguments.job, arguments.json, [&](const Workbench& bench, const site::Job& job) {
            const auto said = outlook::later({bench.catalogue, bench.book, job});
            print(arguments.json ? outlook::write_later(said) : later_screen(said));
            return survey_exit(!said.scheme.empty(), false, false);
        });
}

}  // namespace toft::cli
