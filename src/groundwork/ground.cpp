#include "groundwork/ground.h"

#include "answer/describe.h"
#include "groundwork/ground_parts.h"
#include "study/ground_memo.h"

namespace toft::answer {

namespace {

/// Facts that soil, electrode and separation were read from.
bool of_the_ground(const std::string& pointer) {
    return pointer.rfind("/ground/re", 0) == 0 || pointer.rfind("/ground/layers", 0) == 0 ||
           pointer.find("/electrode/") != std::string::npos ||
           pointer.find("/reach_of_house_earth_m") != std::string::npos ||
           pointer.find("/metalwork") != std::string::npos;
}

}  // namespace

GroundAnswer ground(const Question& q) {
    GroundAnswer answer;
    answer.job = q.job.title;
    answer.cautions = standing_cautions(q.book);
    Silent silent;
    const study::Corner worse;
    study::GroundMemo own;
    study::GroundMemo& memo = q.memo ? *q.memo : own;
    const auto setting =
        study::prepare(silent, q.catalogue, q.job, study::RunAt{0, 0, &memo}, worse);
    std::vector<study::OpenFact> open;
    study::Settler settler(q.catalogue, worse, open, memo);
    const GroundCase c{q, setting, study::settle_soil(settler, q.catalogue, q.job.ground), memo};
    answer.soil = soil_answer(q.job.ground, c.soil, memo);
    GroundSideAnswer side;
    side.building = setting.building_facts->id;
    electrode_answer(c, side);
    for (const study::OpenFact& fact : setting.open) {
        if (!of_the_ground(fact.pointer)) continue;
        UnknownAnswer asked;
        asked.fact = fact.pointer;
        asked.says = fact.says;
        asked.unit = fact.unit;
        asked.low = fact.low;
        asked.high = fact.high;
        asked.stated = fact.stated;
        answer.asked.push_back(std::move(asked));
    }
    side.separation = separation_answer(c);
    side.lost_neutral = lost_neutral_answer(c, side.year);
    answer.sides.push_back(std::move(side));
    return answer;
}

}  // namespace toft::answer
