#include "walk/conclusion.h"

#include <fmt/format.h>

namespace toft::walk {

std::string residual_risk(Choice choice, site::Earthing system) {
    const bool combined = system == site::Earthing::tn_c_s;
    switch (choice) {
        case Choice::supply_earth:
            return combined
                       ? "If the supply loses its neutral, metal here rises with the house's, up "
                         "to "
                         "line voltage, and stays so; no fuse or RCD acts. It hurts whoever "
                         "touches "
                         "it standing on real ground."
                       : "If the supply's earth breaks, nobody notices until a fault finds no way "
                         "back; if it is joined to the neutral along the way, a lost neutral lifts "
                         "the metal here.";
        case Choice::added_electrode:
            return "As with the supply's earth alone, at a voltage that depends on the electrode; "
                   "and when the neutral is lost the electrode carries current without end, which "
                   "dries the ground around it.";
        case Choice::own_electrode:
            return "Rests on the electrode and the RCDs: if an RCD sticks, nothing clears an earth "
                   "fault; a dry summer raises the electrode; what joins the two earths later goes "
                   "unseen. The cable stays on the house's earth up to its far end.";
        case Choice::shared_electrode:
            return "One electrode and the RCDs protect both: if an RCD sticks, nothing clears an "
                   "earth fault, and the metal of house and building then rises together.";
    }
    return "";
}

namespace {

const Way* first_at(const Walk& walk, Standing standing) {
    for (const Way& way : walk.ways) {
        if (way.standing == standing) return &way;
    }
    return nullptr;
}

/// The words of the first step that bears on the choice in that way, a known one if there is one.
std::string why(const Walk& walk, Choice choice, Bearing bearing) {
    for (const bool open : {false, true}) {
        for (const Step& step : walk.steps) {
            if ((step.ruling.known == Known::unknown) != open) continue;
            if (step.ruling[choice].bearing == bearing) return step.ruling[choice].why;
        }
    }
    return "";
}

const char* subject_of(Choice choice) {
    switch (choice) {
        case Choice::supply_earth:
            return "the supply's earth";
        case Choice::added_electrode:
            return "the supply's earth with an added electrode";
        case Choice::own_electrode:
            return "an electrode of its own";
        case Choice::shared_electrode:
            return "the house's electrode, shared";
    }
    return "";
}

std::string capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') {
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    }
    return text;
}

/// Of a subject that a comma parts from what follows, where nothing follows.
std::string at_the_end(std::string subject) {
    if (!subject.empty() && subject.back() == ',') subject.pop_back();
    return subject;
}

std::string of_way(const Walk& walk, const Way& way, const std::string& subject) {
    switch (way.standing) {
        case Standing::required:
            return fmt::format("{} is required: {}.", capital(subject),
                               why(walk, way.choice, Bearing::required));
        case Standing::open:
            return fmt::format("Nothing speaks against {}.", at_the_end(subject));
        case Standing::judgement:
            return fmt::format("{} is a matter of judgement: {}.", capital(subject),
                               why(walk, way.choice, Bearing::speaks_against));
        case Standing::not_known:
            return fmt::format("Whether {} can serve is not known: {}.", subject,
                               why(walk, way.choice, Bearing::ruled_out));
        case Standing::ruled_out:
            return fmt::format("{} is ruled out: {}.", capital(subject),
                               why(walk, way.choice, Bearing::ruled_out));
    }
    return "";
}

/// All ways in sentences; the supply's earth with and without an added electrode in one where they
/// stand alike.
std::string of_ways(const Walk& walk) {
    std::string text;
    for (std::size_t i = 0; i < walk.ways.size(); ++i) {
        const Way& way = walk.ways[i];
        std::string subject = subject_of(way.choice);
        if (way.choice == Choice::supply_earth && i + 1 < walk.ways.size() &&
            of_way(walk, way, "") == of_way(walk, walk.ways[i + 1], "")) {
            subject += ", with an added electrode or without,";
            ++i;
        }
        text += " " + of_way(walk, way, subject);
    }
    return text;
}

/// What is open and bears on some way, in one sentence.
std::string of_unknowns(const Walk& walk) {
    std::string text;
    for (const Step& step : walk.steps) {
        bool bears = false;
        for (const Way& way : walk.ways) {
            bears = bears || step.ruling[way.choice].bearing != Bearing::neutral;
        }
        if (!bears || step.ruling.known != Known::unknown || step.would_change.empty()) continue;
        text += (text.empty() ? " To be found out: " : "; ") + step.would_change.front();
    }
    return text.empty() ? "" : text + ".";
}

int left(const Walk& walk) {
    int ways = 0;
    for (const Way& way : walk.ways) ways += way.standing < Standing::not_known ? 1 : 0;
    return ways;
}

std::string head_of(const Walk& walk) {
    if (const Way* required = first_at(walk, Standing::required)) {
        return fmt::format("Only {} will do here.", subject_of(required->choice));
    }
    if (left(walk) == 0) {
        return first_at(walk, Standing::not_known)
                   ? "As far as is known no way of earthing stands: find out what is open, or "
                     "change "
                     "what rules the ways out."
                   : "As things are no way of earthing stands: change what rules them out.";
    }
    if (!first_at(walk, Standing::open)) {
        return "No way of earthing is free of objection here: it is a matter of judgement.";
    }
    return left(walk) == 1 ? "One way of earthing is left."
                           : "More than one way of earthing serves.";
}

}  // namespace

std::string conclusion_of(const Walk& walk) {
    return head_of(walk) + of_ways(walk) + of_unknowns(walk);
}

}  // namespace toft::walk
