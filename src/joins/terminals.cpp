#include "joins/terminals.h"

#include "base/text.h"
#include "parts/device_words.h"
#include "parts/words.h"

#include <fmt/format.h>

namespace toft::joins {

namespace {

bool from_house(const picture::Stage& stage) { return stage.scheme->run.feeder.empty(); }

/// "32 A breaker", "three 160 A fuses": as short as a terminal's words must be.
std::string short_device(const answer::RunAnswer& run) {
    const bool fuse = run.device.curve.empty() && !parts::opens_on_residual(run.device);
    const std::string rating = significant(run.device.rating_a, 6) + " A ";
    if (parts::opens_on_residual(run.device)) return rating + "RCBO";
    if (!fuse) return rating + "breaker";
    return rating + (run.phases == 3 ? "fuses" : "fuse");
}

End near_end(const picture::Stage& stage) {
    const answer::RunAnswer& run = stage.scheme->run;
    End end;
    end.name = parts::capital(near_name(stage));
    end.around = run.rcd ? Around::lines_and_neutral : Around::lines;
    end.lines = run.rcd && !parts::opens_on_residual(run.device) ? "RCD behind " + short_device(run)
                                                                 : short_device(run);
    end.neutral =
        !run.rcd ? run.fed_from == "spare way" ? "neutral bar of that way" : "neutral of its box"
        : parts::opens_on_residual(run.device) ? "the RCBO's N"
                                               : "the RCD's N";
    end.earth = from_house(stage) ? "main earthing terminal" : "earth bar";
    return end;
}

End far_end(const picture::Stage& stage) {
    End end;
    end.side = Side::far;
    end.name = "Board of " + parts::name_or(stage.far->name, stage.far->id);
    end.around = Around::lines_and_neutral;
    end.lines = "main switch";
    end.neutral = "main switch, then neutral bar";
    end.earth = "earth bar";
    return end;
}

std::string place_words(const answer::RunAnswer& run) {
    if (run.fed_from == "tails") {
        return run.device.curve.empty() ? "in a switch-fuse on the house's tails"
                                        : "in a box of its own on the house's tails";
    }
    if (run.fed_from == "new board") return "in a new small board on the house's tails";
    if (!run.feeder.empty()) return "in a way of the board of " + run.feeder;
    return "in a spare way of the house's board";
}

/// The residual current device of the house's board that its ways stand behind.
std::string front_words(const picture::Stage& stage) {
    const answer::RunAnswer& run = stage.scheme->run;
    if (!run.feeder.empty() || run.fed_from != "spare way") return "";
    const site::Fact<Amperes>& front = stage.job->intake.board.behind_rcd;
    if (!front.known) {
        return "Whether an RCD of that board stands in front is not known: line and neutral must "
               "be on the same side of it.";
    }
    const double amperes = front.high.number();
    if (amperes <= 0) return "";
    return fmt::format(
        "A {} mA RCD of that board stands in front: the neutral goes on the bar behind the same "
        "one.",
        significant(amperes * 1000, 4));
}

}  // namespace

std::string near_name(const picture::Stage& stage) {
    const std::string& feeder = stage.scheme->run.feeder;
    return feeder.empty() ? "the house" : "the board of " + feeder;
}

End end_of(const picture::Stage& stage, std::size_t stretch, Side side) {
    const std::size_t count = stage.scheme->run.stretches.size();
    if (side == Side::near && stretch == 0) return near_end(stage);
    if (side == Side::far && stretch + 1 == count) return far_end(stage);
    End box;
    box.side = side;
    const std::size_t number = side == Side::near ? stretch : stretch + 1;
    box.name = count > 2 ? fmt::format("Joint box {}", number) : "Joint box";
    box.lines = box.neutral = "connector";
    box.earth = "earth terminal of the box";
    return box;
}

std::string terminal_words(const End& end, const Conductor& conductor) {
    const Ending ending = end.side == Side::near ? conductor.near : conductor.far;
    if (ending == Ending::isolated) return "isolated: joined to nothing";
    switch (conductor.kind) {
        case Kind::line:
            return end.lines;
        case Kind::neutral:
            return end.neutral;
        case Kind::armour:
            return "gland, tag, lead: " + end.earth;
        case Kind::core:
        case Kind::separate:
            break;
    }
    return end.earth;
}

std::vector<std::string> head_words(const picture::Stage& stage) {
    const answer::RunAnswer& run = stage.scheme->run;
    std::string device = parts::capital(parts::device_words(run.device, run.phases));
    if (!run.device.curve.empty()) device += ", " + run.device.standard;
    device += ", " + place_words(run);
    if (run.device_stays) device += "; it stays as it is";
    std::vector<std::string> words{device};
    if (run.rcd && parts::opens_on_residual(run.device)) {
        words.push_back("It " + parts::own_residual_words(*run.rcd) +
                        (run.phases == 3 ? ": lines and neutral of the run all go on it."
                                         : ": line and neutral of the run both go on it."));
    } else if (run.rcd) {
        words.push_back(parts::rcd_words(*run.rcd) +
                        (run.phases == 3 ? " behind it: the run's lines and neutral"
                                         : " behind it: the run's line and neutral") +
                        " go through it together.");
    }
    const std::string front = front_words(stage);
    if (!front.empty()) words.push_back(front);
    if (run.line > 0) words.push_back(fmt::format("Taken from L{} of that board.", run.line));
    return words;
}

std::vector<std::string> far_board_words(const picture::Stage& stage) {
    const answer::BuildingAnswer& building = stage.scheme->building;
    std::vector<std::string> words;
    if (!building.main_switch.empty()) {
        words.push_back("Main switch: " + building.main_switch +
                        "; behind it the ways and the neutral bar.");
    }
    for (const answer::RcdAnswer& rcd : building.rcds) {
        std::string line = parts::rcd_words(rcd);
        for (std::size_t i = 0; i < rcd.covers.size(); ++i) {
            line += (i == 0 ? ": " : ", ") + rcd.covers[i];
        }
        words.push_back(line);
    }
    return words;
}

}  // namespace toft::joins
