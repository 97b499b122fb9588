#include "demand/notice.h"

#include "base/limit.h"
#include "base/order.h"
#include "base/text.h"
#include "demand/scenario.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::demand {

namespace {

std::string a(Amperes current) { return significant(current.number(), 3) + " A"; }

std::string kva(Amperes current, Volts u0) {
    return significant((current * u0).number() / 1000, 3) + " kVA";
}

bool over(Amperes value, Amperes limit) { return !within(value.number(), limit.number()); }

class Asker {
public:
    Asker(const tables::Limits& limits, const Occasion& occasion) : limits_(limits), o_(occasion) {}

    std::vector<Notice> all() {
        looped();
        shortage();
        agreement();
        process();
        generation();
        put_in_order(out_, [](const Notice& x, const Notice& y) { return y.when < x.when; });
        return std::move(out_);
    }

private:
    void ask(std::string why) { out_.push_back({When::before, std::move(why)}); }
    void tell(const std::string& what) {
        out_.push_back({When::after, fmt::format("{}: tell them within {} days of the work", what,
                                                 significant(limits_.notice_days.value, 3))});
    }

    Amperes together() const { return *o_.house + o_.run; }

    std::string sum_words() const {
        return fmt::format("house {} ({}) and run {}", a(*o_.house), o_.house_known, a(o_.run));
    }

    void looped() {
        if (o_.looped == site::Answer::yes) ask("the supply is looped with a neighbour's");
        if (o_.looped == site::Answer::unknown) {
            ask("ask whether the supply is looped with a neighbour's");
        }
    }

    void shortage() {
        if (!o_.house || !o_.fuse) {
            const char* find = o_.house  ? "read the fuse"
                               : o_.fuse ? "measure the house's demand"
                                         : "measure the house's demand and read the fuse";
            ask(fmt::format("whether the intake can spare {} more is not known: {}", a(o_.run),
                            find));
            return;
        }
        if (!over(together(), *o_.fuse)) return;
        ask(fmt::format("{} together exceed the {} fuse", sum_words(), a(*o_.fuse)));
    }

    void agreement() {
        if (!o_.agreed || !o_.house) return;
        if (o_.house_known == "declared") {
            ask(
                fmt::format("the house is taken to draw all of the {} they have agreed to: measure "
                            "its demand, or ask whether {} more may be drawn",
                            a(*o_.agreed), a(o_.run)));
            return;
        }
        if (!over(together(), *o_.agreed)) return;
        ask(fmt::format("{} together are more than the {} they have agreed to", sum_words(),
                        a(*o_.agreed)));
    }

    /// The operators' joint process for charge points and heat pumps.
    void process() {
        if (o_.load.empty()) return;
        const Amperes most = limits_.notice_demand.value;
        const std::string bound = fmt::format("{} ({})", a(most), kva(most, o_.u0));
        if (!o_.house || !o_.fuse) {
            ask(fmt::format("{}: a new demand of no more than {} cannot be shown", o_.load, bound));
        } else if (over(together(), most)) {
            ask(fmt::format("{}: {} make {}, over {}", o_.load, sum_words(), a(together()), bound));
        } else if (o_.looped != site::Answer::no) {
            ask(fmt::format("{}: they want to be asked first where the supply is or may be looped",
                            o_.load));
        } else {
            tell(fmt::format("{}: {} make {}, no more than {}", o_.load, sum_words(), a(together()),
                             bound));
        }
    }

    void generation() {
        if (!o_.generates) return;
        const Amperes most = limits_.notice_generation.value;
        const std::string bound = fmt::format("{} ({}) a phase", a(most), kva(most, o_.u0));
        if (!o_.generation) {
            ask("solar or battery: how much it can send out is not stated");
        } else if (over(*o_.generation, most)) {
            ask(fmt::format("solar and battery may send out {} a phase, over {}", a(*o_.generation),
                            bound));
        } else {
            tell(fmt::format("solar and battery may send out {} a phase, no more than {}",
                             a(*o_.generation), bound));
        }
    }

    const tables::Limits& limits_;
    const Occasion& o_;
    std::vector<Notice> out_;
};

}  // namespace

const char* when_words(When when) {
    switch (when) {
        case When::before:
            return "ask first";
        case When::after:
            return "tell after";
        case When::nothing:
            return "nothing to ask or tell";
    }
    return "";
}

std::vector<Notice> notices(const tables::Limits& limits, const Occasion& occasion) {
    return Asker(limits, occasion).all();
}

When heaviest(const std::vector<Notice>& notices) {
    When when = When::nothing;
    for (const Notice& notice : notices) when = std::max(when, notice.when);
    return when;
}

std::string process_load(const site::Building& building, site::Scenario scenario) {
    std::string words;
    for (const site::Circuit& c : building.circuits) {
        const bool charger = c.kind == site::CircuitKind::vehicle_charging;
        if (!charger && c.kind != site::CircuitKind::heat_pump) continue;
        if (!counts(c, scenario)) continue;
        const std::string word = charger ? "charge point" : "heat pump";
        if (words.find(word) == std::string::npos) words += (words.empty() ? "" : " and ") + word;
    }
    return words;
}

std::optional<Amperes> generation_of(const Place<Silent>& place, const site::Job& job,
                                     site::Scenario scenario) {
    Silent silent;
    Amperes sum{0};
    for (const site::Building& building : job.buildings) {
        for (const site::Circuit& c : building.circuits) {
            if (!counts(c, scenario) || !sends_out(*place.tables, c)) continue;
            if (!c.load_w.known && !c.device) return std::nullopt;
            sum += output_current(silent, place, c, 0);
        }
    }
    return sum;
}

}  // namespace toft::demand
