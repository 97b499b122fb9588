#include "study/setting_parts.h"

#include <vector>

namespace toft::study {

namespace {

using site::ReadThrough;

bool cores_serve(const tables::Catalogue& catalogue, const tables::Cable& cable, int phases) {
    const tables::Make& make = tables::make_of(catalogue, cable);
    const int live = phases == 3 ? 4 : 2;
    if (make.family == tables::Family::flat_twin_and_earth) return phases == 1;
    return cable.cores == live + 1 || (make.armoured && cable.cores == live);
}

/// The protective path a reading went back through; of what was not said the one that reads least.
ReadThrough read_through(const site::Existing& facts, const tables::Cable& cable) {
    const bool armour = cable.armour_r20.citation != nullptr;
    const bool core = cable.cpc > square_millimetres(0);
    if (!armour) return ReadThrough::core;
    if (!core) return ReadThrough::armour;
    return facts.through.value_or(ReadThrough::core_and_armour);
}

template <class L>
class ExistingWork {
public:
    ExistingWork(L& ledger, Settler& settler, Setting<L>& setting, std::size_t run_index)
        : ledger_(ledger),
          settler_(settler),
          s_(setting),
          facts_(*setting.run->existing),
          out_(setting.existing),
          at_(fmt::format("/runs/{}/existing", run_index)) {}

    void all() {
        expect();
        condition();
        insulation();
        live();
        loop();
    }

private:
    using Resistance = ValueIn<L, Ohms>;

    /// What the conductors should read by their length.
    void expect() {
        line_ = ledger_.table({"r20.there", "resistance of a core of the cable there per metre"},
                              out_.cable->r20);
        path_ = path_per_metre();
        out_.loop_expected =
            ledger_.let({"R1.R2.there", "line and protective conductor by the shortest length"},
                        (line_ + path_) * s_.length_least);
        out_.live_expected = ledger_.let({"R1.Rn.there", "line and neutral by the shortest length"},
                                         (line_ + line_) * s_.length_least);
        none_ = ledger_.stated({"R.none", "no more than the length gives"}, ohms(0), "readings");
        out_.more_line = out_.more_path = none_;
    }

    ValueIn<L, OhmsPerMetre> path_per_metre() {
        const auto armour = [&] {
            return ledger_.table({"r.arm.there", "resistance of its armour per metre"},
                                 out_.cable->armour_r20);
        };
        const auto core = [&] {
            return ledger_.table({"r.core.there", "resistance of its protective core per metre"},
                                 out_.cable->cpc_r20);
        };
        switch (read_through(facts_, *out_.cable)) {
            case ReadThrough::armour:
                return armour();
            case ReadThrough::core:
                return core();
            case ReadThrough::core_and_armour:
                break;
        }
        const auto a = armour();
        const auto c = core();
        return ledger_.let({"r.both.there", "its core and armour side by side per metre"},
                           a * (c / (a + c)));
    }

    void condition() {
        out_.damaged = facts_.condition == site::Condition::damaged;
        const site::Answer found = facts_.condition == site::Condition::sound ? site::Answer::yes
                                   : out_.damaged                             ? site::Answer::no
                                                  : site::Answer::unknown;
        out_.sound = settler_.settle(
            found, {at_ + "/condition", "the cable that is there is sound", ""}, false);
    }

    void insulation() {
        const auto read =
            settler_.settle(facts_.insulation,
                            {at_ + "/insulation_megohm", "insulation of the cable that is there",
                             "existing.insulation"},
                            1e6);
        out_.insulation =
            ledger_.stated({"R.ins", "insulation of the cable there, the least it may read"},
                           read.bounds.least, read.from);
    }

    void live() {
        out_.live_read = facts_.r1_rn.known;
        if (!out_.live_read) return;
        const auto read = settler_.settle(
            facts_.r1_rn, {at_ + "/r1_rn_ohm", "R1+Rn of the cable that is there", "", "ohm"});
        out_.live = ledger_.stated({"R1.Rn.read", "line and neutral of the cable there, as read"},
                                   read.bounds.most, read.from);
        out_.more_line = ledger_.let(
            {"R.more.line", "of each live conductor over what the longest length gives"},
            most(out_.live - (line_ + line_) * s_.length_most, none_) / 2.0);
    }

    /// The worst of the readings that tell of line and protective conductor.
    void loop() {
        if (facts_.zs.known) from_zs();
        if (facts_.armour.known) from_armour();
        if (facts_.r1_r2.known || !any_) {
            const auto read = settler_.settle(
                facts_.r1_r2,
                {at_ + "/r1_r2_ohm", "R1+R2 of the cable that is there", "existing.r1_r2"});
            take(ledger_.stated({"R1.R2.read", "line and protective conductor there, as read"},
                                read.bounds.most, read.from),
                 ledger_.stated({"R1.R2.least", "… the least it may read"}, read.bounds.least,
                                read.from));
        }
        const auto by_length = (line_ + path_) * s_.length_most + out_.more_line;
        out_.more_path = ledger_.let(
            {"R.more.path", "of the protective path over what the longest length gives"},
            most(out_.loop - by_length, none_));
    }

    void from_zs() {
        const auto read = settler_.settle(
            facts_.zs, {at_ + "/zs_ohm", "Zs at the end of the cable that is there", "", "ohm"});
        const auto zs = ledger_.stated({"Zs.read", "earth fault loop there, as read"},
                                       read.bounds.most, read.from);
        const auto less = ledger_.stated({"Zs.read.least", "… the least it may read"},
                                         read.bounds.least, read.from);
        take(ledger_.let({"R1.R2.zs", "line and protective conductor by the loop that was read"},
                         most(zs - s_.supply.ze_least, none_)),
             ledger_.let({"R1.R2.zs.least", "… the least"}, most(less - s_.supply.ze_most, none_)));
    }

    void from_armour() {
        const auto read = settler_.settle(
            facts_.armour,
            {at_ + "/armour_ohm", "armour of the cable that is there, end to end", "", "ohm"});
        const auto line = line_ * s_.length_most;
        const auto most_read = ledger_.stated({"R.arm.read", "its armour end to end, as read"},
                                              read.bounds.most, read.from);
        const auto least_read = ledger_.stated({"R.arm.least", "… the least it may read"},
                                               read.bounds.least, read.from);
        take(ledger_.let({"R1.R2.arm", "line by its length and armour as read"}, line + most_read),
             ledger_.let({"R1.R2.arm.least", "… the least"}, line + least_read));
    }

    void take(const Resistance& largest, const Resistance& smallest) {
        out_.loop = any_ ? most(out_.loop, largest) : largest;
        out_.loop_least = any_ ? least(out_.loop_least, smallest) : smallest;
        any_ = true;
    }

    L& ledger_;
    Settler& settler_;
    Setting<L>& s_;
    const site::Existing& facts_;
    ExistingSetting<L>& out_;
    std::string at_;
    ValueIn<L, OhmsPerMetre> line_{};
    ValueIn<L, OhmsPerMetre> path_{};
    Resistance none_{};
    bool any_ = false;
};

}  // namespace

const tables::Cable* cable_there(const tables::Catalogue& catalogue, const site::Run& run,
                                 int phases) {
    if (!run.existing) return nullptr;
    const site::Existing& e = *run.existing;
    for (const tables::Cable& cable : catalogue.cables) {
        if (e.family != tables::family_word(cable.family) || e.cores != cable.cores) continue;
        if (e.live != cable.section || !cores_serve(catalogue, cable, phases)) continue;
        if (cable.duty(phases).drop_r.citation) return &cable;
    }
    return nullptr;
}

template <class L>
void prepare_existing(L& ledger, Settler& settler, Setting<L>& s, std::size_t run_index) {
    if (!s.run->existing) return;
    if (!s.existing.cable) {
        s.assumed.push_back(
            fmt::format("the cable that is there has {} cores: it is not offered for {} phase{}",
                        s.run->existing->cores, s.phases, s.phases == 1 ? "" : "s"));
        return;
    }
    ExistingWork<L>(ledger, settler, s, run_index).all();
}

template void prepare_existing(Silent&, Settler&, Setting<Silent>&, std::size_t);
template void prepare_existing(Recording&, Settler&, Setting<Recording>&, std::size_t);

}  // namespace toft::study
