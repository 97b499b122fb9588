#include "board/house_end.h"

#include "base/text.h"
#include "board/face.h"
#include "board/ink.h"
#include "board/wires.h"
#include "parts/cable_words.h"
#include "parts/device_words.h"
#include "parts/fittings.h"
#include "parts/word_column.h"
#include "parts/words.h"

namespace toft::board {

namespace {

constexpr double box_top = 22;  // for the tails that come from above
constexpr double box_edge = 9;
constexpr double cable_room = 14;  // left of the box, for the cable's way down

std::string fed_from_words(const std::string& fed_from) {
    if (fed_from == "tails") return "a box of its own on the tails";
    if (fed_from == "new board") return "a new small board on the tails";
    return "a spare way of the house's board";
}

std::string supply(const site::Intake& in) {
    return "supply " + site::word(in.earthing) +
           (in.phases == 3 ? ", three-phase" : ", single-phase");
}

/// The residual current device of the house's board that a way of it stands behind.
std::string in_front_words(const site::HouseBoard& board) {
    if (!board.behind_rcd.known)
        return "whether an RCD of the house's board stands in front: not known";
    const double amperes = board.behind_rcd.high.number();
    if (amperes <= 0) return "";
    return significant(amperes * 1000, 4) + " mA RCD of the house's board in front of it";
}

Items box_with_device(const answer::RunAnswer& run, Point corner) {
    const int poles = run.phases;
    const Box box{corner.x, corner.y, corner.x + place_wide * poles + 2 * box_edge,
                  corner.y + face_high + 2 * box_edge};
    Style shell = stroked(palette::ink, weight::firm);
    shell.fill = palette::wash;
    Items items{Rect{box, shell, 4}};
    for (int k = 0; k < poles; ++k) {
        const double x = corner.x + box_edge + (k + 0.5) * place_wide;
        append(items, line_wire({{x, corner.y - 16}, {x, corner.y + box_edge}}, k));
    }
    append(items, face_items(head_face(run), corner + Point{box_edge, box_edge}, poles));
    return {Group{std::move(items), {}, "", "house-end", "what feeds the run"}};
}

}  // namespace

std::vector<std::string> house_end_words(const picture::Stage& stage) {
    const answer::RunAnswer& run = stage.scheme->run;
    const bool house = run.feeder.empty();
    std::vector<std::string> words{house ? "House: " + fed_from_words(run.fed_from)
                                         : run.feeder + ": a way of its board"};
    std::string device = device_words(run.device, run.phases);
    if (!run.device.curve.empty()) device += ", " + run.device.standard;
    words.push_back(device);
    if (run.rcd && opens_on_residual(run.device)) {
        words.push_back(own_residual_words(*run.rcd));
    } else if (run.rcd) {
        words.push_back(rcd_words(*run.rcd) + " after it, for the whole run");
    }
    if (!house) return words;
    if (run.fed_from == "spare way") {
        const std::string front = in_front_words(stage.job->intake.board);
        if (!front.empty()) words.push_back(front);
    }
    words.push_back(supply(stage.job->intake));
    return words;
}

std::vector<std::string> incoming_words(const answer::RunAnswer& run) {
    std::vector<std::string> words{"incoming cable"};
    for (const answer::StretchAnswer& s : run.stretches) {
        std::string line = size_words(s) + " " + family_words(s);
        const std::string thin = thin_core_words(s);
        if (!thin.empty()) line += ", " + thin;
        words.push_back(line + ", " + significant(s.length_m, 4) + " m");
    }
    return words;
}

HouseEnd house_end(const picture::Stage& stage, double left, double right, double top, bool below) {
    const answer::RunAnswer& run = stage.scheme->run;
    HouseEnd end;
    const Point corner{left + cable_room, top + box_top};
    const double wide = place_wide * run.phases + 2 * box_edge;
    const double high = face_high + 2 * box_edge;
    end.items = box_with_device(run, corner);
    end.exit = {corner.x + wide / 2, corner.y + high};
    const double words_left = below ? left + cable_room : corner.x + wide + 12;
    WordColumn column(words_left, right, below ? end.exit.y + 26 : top);
    for (const auto& list : {house_end_words(stage), incoming_words(run)}) {
        for (std::size_t i = 0; i < list.size(); ++i) {
            column.words(list[i], {.size = 11.5, .weight = i == 0 ? Weight::bold : Weight::normal},
                         5);
        }
        column.gap(7);
    }
    end.foot = std::max(column.y(), end.exit.y + 14);
    append(end.items, column.take());
    return end;
}

Items cable_line(const answer::CableAnswer& cable, const std::vector<Point>& points) {
    const Build build = build_of(cable);
    Items items = build == Build::armoured ? armoured_line(points)
                  : build == Build::flat   ? flat_line(points)
                                           : sheathed_line(points);
    return {Group{std::move(items), {}, "", "incoming", "incoming cable"}};
}

}  // namespace toft::board
