#pragma once
// What is said of the ground in tests: whole answers, and the parts with what they are worked out
// from.

#include "groundwork/ground_parts.h"
#include "study/ground_memo.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <string>

namespace toft::answer {

inline GroundAnswer ground_of(const site::Job& job) { return ground(support::question_of(job)); }

/// The only outbuilding of the job.
inline GroundSideAnswer side_of(const site::Job& job) { return ground_of(job).sides.at(0); }

/// A job made ready as ground() does it; the job must outlive it.
class Prepared {
public:
    explicit Prepared(const site::Job& job)
        : question_(support::question_of(job)),
          setting_(study::prepare(silent_, support::catalogue(), job, study::RunAt{0, 0, &memo_},
                                  study::Corner{})),
          settler_(support::catalogue(), corner_, open_, memo_),
          soil_(study::settle_soil(settler_, support::catalogue(), job.ground)) {}
    Prepared(const Prepared&) = delete;
    Prepared& operator=(const Prepared&) = delete;

    GroundCase facts() { return {question_, setting_, soil_, memo_}; }
    const study::SoilSetting& soil() const { return soil_; }
    const study::GroundMemo& memo() const { return memo_; }

private:
    Silent silent_;
    study::GroundMemo memo_;
    study::Corner corner_;
    std::vector<study::OpenFact> open_;
    Question question_;
    study::Setting<Silent> setting_;
    study::Settler settler_;
    study::SoilSetting soil_;
};

/// Soil whose resistivity is one figure for the whole year.
inline void all_year(site::Job& job, double ohm_m) {
    job.ground.resistivity = support::between(ohm_metres(ohm_m), ohm_metres(ohm_m));
}

/// Wenner readings: spacing in metres, resistance in ohms.
inline void read_pins(site::Job& job, const std::vector<std::pair<double, double>>& readings) {
    job.ground.resistivity = {};
    job.ground.soil = "";
    for (const auto& [spacing, resistance] : readings) {
        site::PinReading pin;
        pin.spacing = metres(spacing);
        pin.resistance = ohms(resistance);
        job.ground.pins.push_back(pin);
    }
}

}  // namespace toft::answer
