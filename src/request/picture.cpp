#include "request/picture.h"

#include "base/nearest.h"
#include "drawing/svg.h"
#include "request/verbs.h"
#include "request/way.h"

namespace toft::request {

namespace {

constexpr codec::Range widths{gallery::least_width, gallery::most_width};

std::string drawn(const drawing::Scene& scene) {
    const codec::Json json{{"format", "toft-picture/1"}, {"svg", drawing::to_svg(scene)}};
    return json.dump(-1, ' ', false, codec::Json::error_handler_t::replace) + "\n";
}

/// What a picture is asked for with, beside the job.
struct Wanted {
    std::string which, run;
    double width = 0;
};

/// As the command line has it: most pictures know a run from the house alone.
std::string not_from_building(const std::vector<gallery::Picture>& all) {
    std::vector<std::string> others;
    for (const gallery::Picture& one : all) {
        if (one.from_building) others.emplace_back(one.name);
    }
    return fault_text("several-runs", "/picture",
                      "this picture is not drawn of a run that is fed from another building: it "
                      "would show it as fed from the house",
                      "", others);
}

/// A picture that knows one run at a time.
std::string of_run(const Work& work, const gallery::Picture& picture, const Wanted& wanted,
                   const std::vector<gallery::Picture>& all) {
    const auto named = run_named(work.job, wanted.run);
    if (!named.is) return named.faults;
    const answer::Answer whole = answer::design(work.question());
    const auto place = scheme_named(whole, wanted.which);
    if (!place.is) return place.faults;
    std::size_t index = *place.is;
    const auto shown = shown_run(work.job, whole, index, *named.is, !wanted.run.empty());
    if (!shown) return fault_text("not-built", "/run", "this way builds no such run");
    const std::size_t run = place_of(shown->job, shown->id);
    const bool several = work.job.runs.size() > 1;
    const bool from_house = site::find_building(shown->job, shown->job.runs[run].from)->origin;
    if (several && !from_house && !picture.from_building) return not_from_building(all);
    const site::Job job = answer::seen_from(shown->job, shown->id);
    const answer::Answer answer =
        several ? answer::for_run(shown->answer, shown->id) : shown->answer;
    gallery::Subject subject{work.stock.catalogue, job, answer, index, wanted.width};
    std::optional<answer::GroundAnswer> ground;
    if (picture.of_ground) ground = answer::ground({work.stock.catalogue, work.stock.book, job});
    std::optional<outlook::ToleranceAnswer> sure;
    if (picture.of_tolerance && !answer.schemes.empty()) {
        answer::Question question{work.stock.catalogue, work.stock.book, shown->job};
        question.run = run;
        question.bonds_beyond = answer.schemes[index].bonds_beyond;
        sure = outlook::tolerances(question, answer.schemes[index].scheme, {});
    }
    subject.ground = ground ? &*ground : nullptr;
    subject.tolerance = sure ? &*sure : nullptr;
    return drawn(picture.draw(subject));
}

/// A picture of the whole place.
std::string to_scale(const Work& work, const gallery::Picture& picture, const Wanted& wanted) {
    if (!wanted.run.empty()) {
        return fault_text("several-runs", "/run", "this picture shows all runs of the place");
    }
    const answer::Answer whole = answer::design(work.question());
    const auto place = scheme_named(whole, wanted.which);
    if (!place.is) return place.faults;
    return drawn(
        picture.to_scale({work.stock.catalogue, work.job, whole, *place.is, wanted.width}).scene);
}

}  // namespace

std::string picture_of(const std::vector<gallery::Picture>& all, Bench& bench,
                       std::string_view text) {
    Body body(text);
    const std::string name = body.text("picture").value_or(all.front().name);
    Wanted wanted{body.text("key", longest_key).value_or(""), body.text("run").value_or(""),
                  body.number("width", widths).value_or(0)};
    std::vector<std::string> names;
    const gallery::Picture* picture = nullptr;
    for (const gallery::Picture& one : all) {
        names.emplace_back(one.name);
        if (name == one.name) picture = &one;
    }
    if (!picture) {
        body.fault({"unknown-picture", "/picture", "there is no picture " + name,
                    nearest_word(name, names), names});
    }
    const auto work = body.work(bench);
    if (!work) return body.faults_text();
    return picture->to_scale ? to_scale(*work, *picture, wanted)
                             : of_run(*work, *picture, wanted, all);
}

}  // namespace toft::request
