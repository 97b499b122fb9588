#include "cli/commands.h"

#include "cli/command_parts.h"

#include "answer/describe.h"
#include "answer/find.h"
#include "answer/why.h"
#include "base/nearest.h"
#include "cli/files.h"
#include "cli/picture_file.h"
#include "cli/progress.h"
#include "cli/screen.h"
#include "cli/workbench.h"
#include "codec/answer.h"
#include "codec/dark.h"
#include "codec/ground.h"
#include "codec/job.h"
#include "codec/levers.h"
#include "codec/reach.h"
#include "codec/unknowns.h"
#include "codec/why.h"
#include "drawing/svg.h"
#include "gallery/pictures.h"
#include "outlook/later_json.h"
#include "outlook/tolerance_json.h"
#include "request/picked.h"
#include "site/built.h"
#include "tables/device_words.h"
#include "tables/embedded.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <functional>
#include <optional>
#include <utility>

namespace toft::cli {

namespace {

answer::Answer designed(const Workbench& bench, const site::Job& job, bool all) {
    return answer::design({bench.catalogue, bench.book, job, all, now_milliseconds});
}

/// The run that was named; of several, where none was, the first that leaves the house. None, with
/// a complaint, where there is no such run.
std::optional<std::size_t> run_named(const site::Job& job, const std::string& name, bool json) {
    std::vector<std::string> ids;
    for (std::size_t i = 0; i < job.runs.size(); ++i) {
        const bool from_house = site::find_building(job, job.runs[i].from)->origin;
        if (name.empty() ? from_house : job.runs[i].id == name) return i;
        ids.push_back(job.runs[i].id);
    }
    fault_exit({{"unknown-run", "--run", "there is no run " + name, nearest_word(name, ids), ids}},
               json, "nothing to look at:");
    return std::nullopt;
}

/// Most pictures know a run from the house to one building: what is fed through it they leave out,
/// and of a run from another building they would show a house that is not there.
bool shown_alone(const site::Job& job, std::size_t run, const gallery::Picture& picture) {
    if (picture.from_building || site::find_building(job, job.runs[run].from)->origin) {
        complain(
            "the picture shows this run alone: what is fed through its building is not on it\n");
        return true;
    }
    std::vector<std::string> others;
    for (const gallery::Picture& one : gallery::pictures()) {
        if (one.from_building) others.emplace_back(one.name);
    }
    fault_exit({{"several-runs", "--picture",
                 "this picture is not drawn of a run that is fed from another building: it would "
                 "show it as fed from the house",
                 "", others}},
               false, "nothing to draw:");
    return false;
}

void print_workings(const answer::Recorded& recorded, const std::string& scheme_key) {
    for (const std::string& name : recorded.names()) {
        const auto working = recorded.working(name);
        if (working) print("\n" + working_screen(*working, scheme_key));
    }
}

/// A run from a building, where nothing sound feeds that building.
int nothing_arrives(const site::Job& job, std::size_t run) {
    const site::Building& from = *site::find_building(job, job.runs[run].from);
    complain(
        fmt::format("no way to build all runs is sound, so nothing is known of what arrives "
                    "at the board of {} (toft design says why)\n",
                    from.name.empty() ? from.id : from.name));
    return no_sound_scheme;
}

/// The way looked at builds another run to that building.
int not_built(const std::string& run, bool json, const char* title) {
    return fault_exit({{"not-built",
                        "--run",
                        fmt::format("{} is not built in this way: another run feeds its building; "
                                    "name the rank of a way that builds it (toft design lists "
                                    "them)",
                                    run),
                        "",
                        {}}},
                      json, title);
}

/// Where there is nothing to show, since nothing is sound.
int nothing_sound(const char* says, bool json) {
    fault_exit({{"no-sound-scheme", "", says, "", {}}}, json, "nothing to look at:");
    return no_sound_scheme;
}

int no_such_scheme(const answer::Question& asked, const std::string& which, bool json) {
    // Only as built a job can be worked with.
    const site::Job alone = site::as_built(asked.job, {asked.run});
    answer::Question question{asked.catalogue, asked.book,
                              site::has_choice(asked.job) ? alone : asked.job};
    if (!site::has_choice(asked.job)) question.run = asked.run;
    if (which.empty()) {
        return nothing_sound(
            "no scheme is sound, so none is recommended; name one with --scheme to see why it fell "
            "(toft design lists nearest misses)",
            json);
    }
    const bool rank = request::rank_like(which);
    return fault_exit({{"unknown-scheme",
                        "",
                        rank ? "the answer lists no scheme of that rank" : "no scheme has that key",
                        rank ? "" : answer::nearest_scheme(question, which),
                        {}}},
                      json, "nothing to look at:");
}

}  // namespace

int demo() {
    return with_bench([](const Workbench& bench) {
        auto job =
            codec::read_job(toft::tables::embedded_text("examples/demo.json"), bench.catalogue);
        if (!job) return fault_exit(job.error(), false, "toft: its own demo job is at fault");
        const answer::Answer answer = designed(bench, *job, false);
        print("This is the demo job. For your own: toft design JOB.json (see toft --help)\n\n");
        print(design_screen(answer));
        auto written =
            write_output("out/demo.svg", drawing::to_svg(gallery::pictures().front().draw(
                                             {bench.catalogue, *job, answer, 0, 0})));
        if (!written) return fault_exit(written.error(), false, "the picture was not written:");
        print(fmt::format("picture: {}\n\nNext: ./run serve, the page to survey a job of your "
                          "own\n",
                          *written));
        return answer_exit(answer);
    });
}

int design(const DesignArguments& arguments) {
    const auto work = [&](const Workbench& bench, const site::Job& job) {
        Watch watch;
        answer::Question question{bench.catalogue, bench.book, job};
        question.all = arguments.all;
        question.milliseconds = now_milliseconds;
        question.go_on = [&watch](const answer::Progress& progress) {
            return watch.goes_on([&] { return progress_words(progress); });
        };
        const answer::Answer answer = answer::design(question);
        watch.end();
        print(arguments.json ? codec::write_answer(answer) : design_screen(answer));
        return answer_exit(answer);
    };
    if (!arguments.job.empty()) return with_job(arguments.job, arguments.json, work);
    return with_bench([&](const Workbench& bench) {
        auto job = codec::quick_job(arguments.facts, bench.catalogue);
        if (!job) return fault_exit(job.error(), arguments.json, "the facts do not make a job:");
        return work(bench, *job);
    });
}

int tables(const TablesArguments& arguments) {
    return with_job(arguments.job, arguments.json,
                    [&](const Workbench& bench, const site::Job& job) {
                        answer::Question question{bench.catalogue, bench.book, job};
                        const auto run = run_named(job, arguments.run, arguments.json);
                        if (!run) return static_cast<int>(bad_input);
                        question.run = *run;
                        const bool behind = !site::find_building(job, job.runs[*run].from)->origin;
                        bool left_out = false;
                        std::optional<request::Picked> way;
                        if (behind || site::has_choice(job)) {
                            way = request::pick(question, "", arguments.run, left_out);
                            if (left_out)
                                return not_built(arguments.run, arguments.json, "no tables:");
                            if (!way) return nothing_arrives(job, *run);
                        }
                        const site::Job built = way                    ? way->job
                                                : job.runs.size() == 1 ? job
                                                                       : site::as_built(job);
                        answer::Question of_run{bench.catalogue, bench.book, built};
                        of_run.run = way ? way->run : *run;
                        of_run.incoming = way && way->incoming ? &*way->incoming : nullptr;
                        const auto reach = answer::reach(of_run, arguments.wish);
                        print(arguments.json ? codec::write_reach(reach) : reach_screen(reach));
                        return static_cast<int>(done);
                    });
}

int ground(const GroundArguments& arguments) {
    return with_job_of_one_run(
        arguments.job, arguments.json, [&](const Workbench& bench, const site::Job& job) {
            const auto said = answer::ground({bench.catalogue, bench.book, job});
            print(arguments.json ? codec::write_ground(said) : ground_screen(said));
            return static_cast<int>(done);
        });
}

namespace {

/// Runs `work` on the scheme that was named of the run that was named, with a question about that
/// run in the job as built.
template <class Arguments, class Work>
int with_scheme(const Arguments& arguments, const Work& work) {
    return with_job(
        arguments.job, arguments.json, [&](const Workbench& bench, const site::Job& job) {
            answer::Question question{bench.catalogue, bench.book, job};
            const auto run = run_named(job, arguments.run, arguments.json);
            if (!run) return static_cast<int>(bad_input);
            question.run = *run;
            bool left_out = false;
            const auto picked = request::pick(question, arguments.scheme, arguments.run, left_out);
            if (left_out) return not_built(arguments.run, arguments.json, "nothing to look at:");
            if (!picked) return no_such_scheme(question, arguments.scheme, arguments.json);
            answer::Question of_run{bench.catalogue, bench.book, picked->job};
            of_run.run = picked->run;
            of_run.incoming = picked->incoming ? &*picked->incoming : nullptr;
            of_run.bonds_beyond = picked->bonds_beyond;
            of_run.bought_before = picked->bought_before;
            return work(of_run, picked->scheme);
        });
}

}  // namespace

int explain(const ExplainArguments& arguments) {
    return with_scheme(arguments, [&](const answer::Question& question,
                                      const study::RunScheme& scheme) {
        const answer::Recorded recorded(question, scheme);
        const std::string key = study::scheme_key(scheme);
        const std::vector<std::string> names = recorded.names();
        if (arguments.name.empty()) {
            for (const std::string& name : names) print(name + "\n");
            if (arguments.all) print_workings(recorded, key);
            return static_cast<int>(done);
        }
        const auto working = recorded.working(arguments.name);
        if (!working) {
            return fault_exit({{"unknown-figure", "", "there is no figure " + arguments.name,
                                nearest_word(arguments.name, names), names}},
                              arguments.json, "nothing to explain:");
        }
        print(arguments.json ? codec::write_working(*working, key) : working_screen(*working, key));
        return static_cast<int>(done);
    });
}

int tolerance_of(const ToleranceArguments& arguments) {
    return with_scheme(
        arguments, [&](const answer::Question& question, const study::RunScheme& scheme) {
            const auto said = outlook::tolerances(question, scheme, arguments.wish);
            print(arguments.json ? outlook::write_tolerance(said) : tolerance_screen(said));
            return static_cast<int>(done);
        });
}

namespace {

/// How the outbuildings are to be earthed: of several runs each as the cheapest way to build them
/// all feeds it; where there is none, only those fed from the house.
std::vector<walk::Walk> walks_for(const Workbench& bench, const site::Job& job) {
    if (job.runs.size() == 1) return answer::walks_of(bench.catalogue, job);
    return designed(bench, job, false).walks;
}

}  // namespace

int why(const WhyArguments& arguments) {
    return with_job(
        arguments.job, arguments.json, [&](const Workbench& bench, const site::Job& job) {
            std::optional<std::size_t> run;
            if (!arguments.run.empty()) {
                run = run_named(job, arguments.run, arguments.json);
                if (!run) return static_cast<int>(bad_input);
            }
            std::vector<walk::Walk> walks = walks_for(bench, job);
            if (run) {
                walks.erase(std::remove_if(walks.begin(), walks.end(),
                                           [&](const walk::Walk& walk) {
                                               return walk.building != job.runs[*run].to;
                                           }),
                            walks.end());
                if (walks.empty()) return nothing_arrives(job, *run);
            }
            print(arguments.json
                      ? codec::write_why(job.title, walks)
                      : why_screen(job.title, walks, answer::standing_cautions(bench.book)));
            return static_cast<int>(done);
        });
}

namespace {

int no_such_rank(const answer::Answer& answer, bool json, const char* title) {
    return fault_exit({{"unknown-scheme",
                        "",
                        fmt::format("there are {} schemes", answer.schemes.size()),
                        "",
                        {}}},
                      json, title);
}

}  // namespace

int dark(const DarkArguments& arguments) {
    return with_job_of_one_run(
        arguments.job, arguments.json, [&](const Workbench& bench, const site::Job& job) {
            const answer::Answer answer = designed(bench, job, false);
            if (answer.schemes.empty()) {
                return nothing_sound(
                    "no scheme is sound, so there is nothing to go dark (toft design says why)",
                    arguments.json);
            }
            const auto index = static_cast<std::size_t>(arguments.rank - 1);
            if (index >= answer.schemes.size()) {
                return no_such_rank(answer, arguments.json, "nothing to look at:");
            }
            const answer::SchemeAnswer& scheme = answer.schemes[index];
            print(arguments.json ? codec::write_dark(job.title, scheme)
                                 : dark_screen(answer, scheme));
            return answer_exit(answer);
        });
}

namespace {

int write_picture(const drawing::Scene& scene, const std::string& path, const PictureFile& wanted) {
    const auto content = content_of(scene, wanted);
    if (!content) return fault_exit(content.error(), false, "the picture was not written:");
    if (!content->missing.empty()) {
        complain(fmt::format("the font has no letters for {}; they are shown as \uFFFD\n",
                             content->missing));
    }
    auto written = write_output(path, content->bytes);
    if (!written) return fault_exit(written.error(), false, "the picture was not written:");
    complain(fmt::format("picture: {}\n", *written));
    return done;
}

/// The kind of file that is wanted; none, with a complaint, for an ending that says none.
std::optional<PictureFile> wanted_file(const DrawArguments& arguments) {
    PictureFile wanted{PictureKind::svg, arguments.dpi, arguments.width == 0, arguments.date};
    if (arguments.out.empty()) return wanted;
    if (const auto kind = kind_of(arguments.out)) {
        wanted.kind = *kind;
        const bool paper = *kind == PictureKind::pdf || *kind == PictureKind::dxf;
        if (!paper || arguments.width == 0) return wanted;
        complain("toft: --width is for .svg and .png; a .pdf or .dxf is laid out for paper\n");
        return std::nullopt;
    }
    complain(
        fmt::format("toft: {}: the ending of the name says what to write: .svg, .pdf, .png or "
                    ".dxf\n",
                    arguments.out));
    return std::nullopt;
}

}  // namespace

namespace {

/// Faults of the devices named for a picture of a pair.
Faults unknown_devices(const Workbench& bench, const DrawArguments& arguments) {
    std::vector<std::string> names;
    for (const tables::Device& device : bench.catalogue.devices) {
        const std::string name = tables::device_words(device);
        if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
    }
    Faults faults;
    for (const auto& [option, words] : {std::pair{"--upstream", arguments.upstream},
                                        std::pair{"--downstream", arguments.downstream}}) {
        if (words.empty() || tables::device_by_words(bench.catalogue.devices, words)) continue;
        faults.push_back({"unknown-device", option, "the tables have no device " + words,
                          nearest_word(words, names), names});
    }
    return faults;
}

outlook::ToleranceAnswer sureness_of(const Workbench& bench, const site::Job& job, std::size_t run,
                                     const answer::SchemeAnswer& scheme) {
    answer::Question question{bench.catalogue, bench.book, job};
    question.run = run;
    question.bonds_beyond = scheme.bonds_beyond;
    return outlook::tolerances(question, scheme.scheme, {});
}

/// Prints the scene, or writes it to the file that is wanted.
int give_picture(const drawing::Scene& scene, const DrawArguments& arguments,
                 const PictureFile& wanted, const answer::Answer& answer) {
    if (arguments.out.empty()) {
        print(drawing::to_svg(scene));
        return answer_exit(answer);
    }
    const int code = write_picture(scene, arguments.out, wanted);
    return code == done ? answer_exit(answer) : code;
}

/// A picture true to scale: all runs of the place that the way builds.
int draw_to_scale(const DrawArguments& arguments, PictureFile wanted,
                  const gallery::Picture& picture, const gallery::Subject& subject) {
    if (!arguments.run.empty()) {
        complain("toft: --run is not for route and trench: they show all runs of the place\n");
        return wrong_usage;
    }
    const digging::Measured measured = picture.to_scale(subject);
    wanted.space = dxf::Space{1 / digging::units_a_metre(measured.one_to), measured.zero};
    return give_picture(measured.scene, arguments, wanted, subject.answer);
}

}  // namespace

int draw(const DrawArguments& arguments) {
    const auto wanted = wanted_file(arguments);
    const gallery::Picture* picture = gallery::find_picture(arguments.picture);
    if (!wanted || !picture) return wrong_usage;
    if (!picture->of_pair && !(arguments.upstream.empty() && arguments.downstream.empty())) {
        complain("toft: --upstream and --downstream are for --picture pair\n");
        return wrong_usage;
    }
    return with_job(arguments.job, false, [&](const Workbench& bench, const site::Job& stated) {
        const Faults devices = unknown_devices(bench, arguments);
        if (!devices.empty()) return fault_exit(devices, false, "nothing to draw:");
        const auto named = run_named(stated, arguments.run, false);
        if (!named) return static_cast<int>(bad_input);
        const answer::Answer whole = designed(bench, stated, false);
        auto index = static_cast<std::size_t>(arguments.rank - 1);
        if (!whole.schemes.empty() && index >= whole.schemes.size()) {
            return no_such_rank(whole, false, "nothing to draw:");
        }
        if (picture->to_scale) {
            return draw_to_scale(arguments, *wanted, *picture,
                                 {bench.catalogue, stated, whole, index, arguments.width});
        }
        const auto shown = request::shown_run(stated, whole, index, *named, !arguments.run.empty());
        if (!shown) return not_built(arguments.run, false, "nothing to draw:");
        const std::size_t run = request::place_of(shown->job, shown->id);
        if (stated.runs.size() > 1 && !shown_alone(shown->job, run, *picture))
            return static_cast<int>(bad_input);
        const site::Job job = answer::seen_from(shown->job, shown->id);
        const answer::Answer answer =
            stated.runs.size() > 1 ? answer::for_run(shown->answer, shown->id) : shown->answer;
        std::optional<answer::GroundAnswer> ground;
        if (picture->of_ground) ground = answer::ground({bench.catalogue, bench.book, job});
        std::optional<outlook::ToleranceAnswer> sure;
        if (picture->of_tolerance && !answer.schemes.empty()) {
            sure = sureness_of(bench, shown->job, run, answer.schemes[index]);
        }
        const drawing::Scene scene = picture->draw(
            {bench.catalogue, job, answer, index, arguments.width, ground ? &*ground : nullptr,
             arguments.upstream, arguments.downstream, sure ? &*sure : nullptr});
        return give_picture(scene, arguments, *wanted, answer);
    });
}

}  // namespace toft::cli
