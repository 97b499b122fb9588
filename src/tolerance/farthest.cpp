#include "tolerance/farthest.h"

#include "base/root.h"
#include "search/evaluate.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::tolerance {

namespace {

constexpr double most_times = 100;

/// A figure that is turned, and what it reads.
struct Dial {
    Farthest out;
    Kind kind = Kind::other;
    double low = 0, high = 0;  ///< where it stands
    std::function<void(site::Job&, double value)> turn;
    std::function<double(const study::Setting<Silent>&)> reading;  ///< none: the value itself
};

using Holds = std::array<bool, rules::rule_count>;

class Turner {
public:
    explicit Turner(const Subject& subject)
        : subject_(subject), job_(job_over(subject.place.job, subject.varied)) {}

    const site::Job& job() const { return job_; }

    study::Setting<Silent> at(const Dial& dial, double value) const {
        site::Job job = job_;
        dial.turn(job, value);
        // Nothing that is asked of the setting here looks back at its job.
        return prepared_in(subject_.place, job);
    }

    Holds all(const Dial& dial, double value) const {
        site::Job job = job_;
        dial.turn(job, value);
        const auto setting = prepared_in(subject_.place, job);
        search::Evaluation e;
        search::evaluate(setting, subject_.scheme, e);
        Holds holds{};
        for (std::size_t i = 0; i < holds.size(); ++i) {
            holds[i] = e.findings[i].rule->only_cautions || search::surely_met(e.findings[i]);
        }
        return holds;
    }

    bool one(const Dial& dial, double value, std::size_t rule) const {
        site::Job job = job_;
        dial.turn(job, value);
        const auto setting = prepared_in(subject_.place, job);
        return search::surely_met(search::finding_of_one(setting, subject_.scheme, rule));
    }

private:
    const Subject& subject_;
    site::Job job_;
};

/// Degrees Celsius: no cable of the scheme works in surroundings that are hotter than itself.
double hottest(const Subject& subject) {
    double most = 0;
    for (const study::Stretch& laid : subject.scheme.laid()) {
        const tables::Make& make = tables::make_of(subject.place.catalogue, *laid.cable);
        most = std::max(most, make.live.initial.value.number());
    }
    return most;
}

double read(const Turner& turner, const Dial& dial, double value) {
    return dial.reading ? dial.reading(turner.at(dial, value)) : value;
}

void look_up(const Turner& turner, double hottest, Dial& dial) {
    const double end = dial.kind == Kind::temperature ? hottest : dial.high * most_times;
    if (!(end > dial.high)) return;
    const Holds now = turner.all(dial, dial.high);
    const Holds then = turner.all(dial, end);
    for (std::size_t i = 0; i < now.size(); ++i) {
        if (!now[i] || then[i]) continue;
        const double last =
            last_holding(dial.high, end, [&](double x) { return turner.one(dial, x, i); });
        dial.out.up_to.push_back({i, read(turner, dial, last), last / dial.high});
    }
}

void look_down(const Turner& turner, Dial& dial) {
    if (dial.kind == Kind::temperature || !(dial.low > 0)) return;
    const Holds now = turner.all(dial, dial.low);
    const Holds then = turner.all(dial, dial.low / most_times);
    for (std::size_t i = 0; i < now.size(); ++i) {
        if (!now[i] || then[i]) continue;
        // Downwards is upwards in the number of times that it is smaller.
        const double times = last_holding(
            1, most_times, [&](double t) { return turner.one(dial, dial.low / t, i); });
        dial.out.down_to.push_back({i, read(turner, dial, dial.low / times), 1 / times});
    }
}

std::vector<Dial> dials_of(const Subject& subject, const site::Job& over) {
    const Place& place = subject.place;
    const auto setting = prepared_in(place, over);
    std::vector<Dial> dials;
    Dial length{
        {fmt::format("/runs/{}/legs", place.at.run), "length of the whole run", "m", 0, {}, {}},
        Kind::length,
        1,
        1,
        {},
        {}};
    length.out.now = setting.length_most.number();
    const std::size_t run = place.at.run;
    length.turn = [run](site::Job& job, double times) {
        for (site::Leg& leg : job.runs[run].legs) {
            leg.length.low = leg.length.low * times;
            leg.length.high = leg.length.high * times;
        }
    };
    length.reading = [](const auto& s) { return s.length_most.number(); };
    dials.push_back(std::move(length));
    if (setting.ib > amperes(0)) {
        Dial load{{fmt::format("/buildings/{}", site::building_index(place.job, setting.run->to)),
                   "load, as design current of the run",
                   "A",
                   setting.ib.number(),
                   {},
                   {}},
                  Kind::load,
                  1,
                  1,
                  {},
                  {}};
        std::vector<Figure> loads;
        for (Figure& f : figures_of({place.catalogue, over, place.at})) {
            if (f.kind == Kind::load && f.known) loads.push_back(std::move(f));
        }
        load.turn = [loads](site::Job& job, double times) {
            for (const Figure& f : loads) f.set(job, f.low * times, f.high * times);
        };
        load.reading = [](const auto& s) { return s.ib.number(); };
        if (!loads.empty()) dials.push_back(std::move(load));
    }
    for (const Figure& f : figures_of({place.catalogue, over, place.at})) {
        if (!f.known || f.kind == Kind::length || f.kind == Kind::load) continue;
        Dial dial{{f.pointer, f.says, f.unit, f.high, {}, {}}, f.kind, f.low, f.high, {}, {}};
        const Set set = f.set;
        dial.turn = [set](site::Job& job, double value) { set(job, value, value); };
        dials.push_back(std::move(dial));
    }
    return dials;
}

}  // namespace

std::vector<Farthest> farthest_of(const Subject& subject) {
    const Turner turner(subject);
    std::vector<Farthest> all;
    for (Dial& dial : dials_of(subject, turner.job())) {
        look_up(turner, hottest(subject), dial);
        look_down(turner, dial);
        Farthest& out = dial.out;
        std::stable_sort(out.up_to.begin(), out.up_to.end(),
                         [](const Bound& a, const Bound& b) { return a.times < b.times; });
        std::stable_sort(out.down_to.begin(), out.down_to.end(),
                         [](const Bound& a, const Bound& b) { return a.times > b.times; });
        if (!out.up_to.empty() || !out.down_to.empty()) all.push_back(std::move(out));
    }
    return all;
}

}  // namespace toft::tolerance
