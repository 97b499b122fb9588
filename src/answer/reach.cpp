#include "answer/reach.h"

#include "answer/describe.h"
#include "base/root.h"
#include "base/text.h"
#include "rules/rulebook.h"
#include "study/ground_memo.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::answer {

namespace {

using study::Protective;

constexpr double shortest = 1;
constexpr double farthest = 500;
constexpr double stride = 1.2;

const site::Leg& longest_leg(const site::Run& run) {
    return *std::max_element(
        run.legs.begin(), run.legs.end(),
        [](const site::Leg& a, const site::Leg& b) { return a.length.high < b.length.high; });
}

/// The job with one leg of that length and one load.
class Stretchable {
public:
    Stretchable(const Question& q, const ReachWish& wish)
        : q_(q), phases_(study::phase_choices(q.job, q.run).front()), job_(q.job) {
        const site::Run& stated = q.job.runs[q.run];
        leave_out_behind(stated.to);
        q_.run = 0;
        while (job_.runs[q_.run].id != stated.id) ++q_.run;
        site::Run& run = job_.runs[q_.run];
        site::Leg leg = longest_leg(run);
        leg.family.clear();
        leg.cores.reset();
        leg.live.reset();
        run.legs = {leg};
        site::Building& far = job_.buildings[site::building_index(job_, run.to)];
        far.circuits.clear();
        far.future_load = {};
        far.load_w = {};
        job_.wishes.offer = wish.families;
    }

    void load(Amperes i) {
        const std::string& to = job_.runs[q_.run].to;
        job_.buildings[site::building_index(job_, to)].load = {true, i, i,
                                                               site::Standing::declared};
    }

    study::Setting<Silent> at(double metres_long) {
        site::Fact<Metres>& length = job_.runs[q_.run].legs[0].length;
        length = {true, metres(metres_long), metres(metres_long), site::Standing::measured};
        Silent silent;
        return study::prepare(silent, q_.catalogue, job_, run_at(q_, phases_), study::Corner{});
    }

    const site::Job& job() const { return job_; }
    int phases() const { return phases_; }

private:
    /// A load of the tables is all that the run carries: what is fed through its building goes.
    void leave_out_behind(const std::string& building) {
        std::vector<std::string> behind;
        for (const site::Run& run : job_.runs) {
            if (run.from == building) behind.push_back(run.id);
        }
        for (const std::string& id : behind) {
            const auto run = std::find_if(job_.runs.begin(), job_.runs.end(),
                                          [&](const site::Run& r) { return r.id == id; });
            const std::string to = run->to;
            job_.runs.erase(run);
            leave_out_behind(to);
        }
    }

    Question q_;  ///< about the job given; its run is the place in the job here
    int phases_ = 1;
    site::Job job_;
};

/// The first rule, of those that figures decide, that the scheme fails; null when it meets all.
const rules::RuleInfo* first_failing(const study::Setting<Silent>& setting,
                                     const study::RunScheme& scheme) {
    const auto& book = rules::rulebook();
    for (std::size_t i = 0; i < book.size(); ++i) {
        if (book[i].info->needs == study::Stage::none) continue;
        if (search::judge_one(setting, scheme, i) == rules::Verdict::fails) return book[i].info;
    }
    return nullptr;
}

/// A rule may fail, hold again and fail: the first length that fails ends the reach.
ReachCell reach_of(Stretchable& job, const study::RunScheme& scheme) {
    const rules::RuleInfo* failing = first_failing(job.at(shortest), scheme);
    if (failing) return {0, failing->name};
    double holds = shortest;
    while (holds < farthest) {
        const double next = std::min(holds * stride, farthest);
        if (first_failing(job.at(next), scheme)) {
            const double last = last_holding(holds, next, [&](double length) {
                return first_failing(job.at(length), scheme) == nullptr;
            });
            const double beyond = last + (next - last) * 1e-6;
            const rules::RuleInfo* ends = first_failing(job.at(beyond), scheme);
            return {last, ends ? ends->name : ""};
        }
        holds = next;
    }
    return {farthest, ""};
}

std::vector<const tables::Device*> devices_for(const tables::Catalogue& catalogue,
                                               const ReachWish& wish) {
    std::vector<const tables::Device*> devices;
    for (const tables::Device& d : catalogue.devices) {
        if (d.standard != wish.standard || (!d.curve.empty() && d.curve != wish.curve)) continue;
        const bool known = std::any_of(devices.begin(), devices.end(), [&](const auto* other) {
            return other->rating == d.rating;
        });
        if (!known) devices.push_back(&d);
    }
    return devices;
}

/// What protects in a cable of so many cores.
std::vector<Protective> ways_to_protect(const tables::Make& make, const tables::Cable& cable,
                                        int phases) {
    const int live = phases == 3 ? 4 : 2;
    if (!make.armoured) return {Protective::core};
    if (cable.cores == live) return {Protective::armour};
    return {Protective::core, Protective::core_and_armour};
}

class Tabulator {
public:
    Tabulator(const Question& q, const ReachWish& wish)
        : q_(q), job_(q, wish), devices_(devices_for(q.catalogue, wish)) {}

    ReachAnswer work() {
        job_.load(amperes(1));
        const auto setting = job_.at(shortest);
        describe(setting);
        for (const tables::Device* d : devices_) out_.loads_a.push_back(d->rating.number());
        const search::Shop shop = search::shop_for(setting);
        for (const tables::Cable* cable : shop.cables) {
            if (!setting.stretches[0].families[static_cast<std::size_t>(cable->family)]) continue;
            const tables::Make& make = tables::make_of(q_.catalogue, *cable);
            for (const Protective protective : ways_to_protect(make, *cable, job_.phases())) {
                table_for(*cable, protective).rows.push_back(row(*cable, protective));
            }
        }
        return std::move(out_);
    }

private:
    ReachTable& table_for(const tables::Cable& cable, Protective protective) {
        for (ReachTable& table : out_.tables) {
            if (table.family == tables::family_word(cable.family) && table.cores == cable.cores &&
                table.protective_conductor == study::protective_word(protective)) {
                return table;
            }
        }
        out_.tables.push_back({tables::family_word(cable.family),
                               cable.cores,
                               study::protective_word(protective),
                               {}});
        return out_.tables.back();
    }

    ReachRow row(const tables::Cable& cable, Protective protective) {
        ReachRow row;
        row.section_mm2 = cable.section.number();
        for (const tables::Device* device : devices_) {
            job_.load(device->rating);
            row.cells.push_back(reach_of(job_, scheme(cable, protective, *device)));
        }
        return row;
    }

    study::RunScheme scheme(const tables::Cable& cable, Protective protective,
                            const tables::Device& device) const {
        const bool tt = system_ == site::Earthing::tt;
        study::RunScheme s;
        s.earthing =
            tt ? study::BuildingEarthing::shared_electrode : study::BuildingEarthing::supply_earth;
        s.phases = job_.phases();
        s.first() = {&cable, protective, nullptr, 1};
        s.device = &device;
        s.fed_from = device.fuse() ? site::FedFrom::tails : site::FedFrom::new_board;
        if (q_.incoming) s.fed_from = site::FedFrom::spare_way;
        if (tt && !device.residual) s.rcd = &q_.catalogue.run_rcds.front();
        return s;
    }

    void describe(const study::Setting<Silent>& setting) {
        out_.job = q_.job.title;
        system_ = setting.supply.system;
        if (q_.job.runs.size() > 1) out_.run = setting.run->id;
        out_.phases = job_.phases();
        out_.longest_m = farthest;
        out_.laid = site::word(setting.legs[0].method);
        out_.supply = fmt::format(
            "{}, Ze at most {} Ω, drop of the run at most {} %", site::word(setting.supply.system),
            significant(setting.supply.ze_most.number(), 3), significant(setting.drop_limit, 3));
        if (!devices_.empty()) {
            const tables::Device& d = *devices_.front();
            out_.device = d.standard + (d.curve.empty() ? "" : " type " + d.curve);
        }
        out_.assumed = setting.assumed;
        if (q_.incoming) {
            out_.assumed.push_back(
                "what the runs before this one leave is that of the cheapest way to build them "
                "all, at the job's own load: they lose more where this run carries more");
        }
        for (const study::OpenFact& fact : setting.open) {
            out_.assumed.push_back(
                fmt::format("{} is not known: taken at its worse end", fact.says));
        }
        out_.cautions = standing_cautions(q_.book);
    }

    const Question& q_;
    Stretchable job_;
    std::vector<const tables::Device*> devices_;
    site::Earthing system_ = site::Earthing::tn_c_s;  ///< of the board that feeds the run
    ReachAnswer out_;
};

}  // namespace

ReachAnswer reach(const Question& question, const ReachWish& wish) {
    ReachWish whole = wish;
    if (whole.families.empty()) whole.families = question.job.wishes.offer;
    if (whole.families.empty()) {
        whole.families = {tables::family_word(tables::Family::armoured_xlpe_copper)};
    }
    study::GroundMemo memo;
    Question kept = question;
    if (!kept.memo) kept.memo = &memo;
    return Tabulator(kept, whole).work();
}

}  // namespace toft::answer
