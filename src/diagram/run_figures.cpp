#include "diagram/run_figures.h"

#include "diagram/wording.h"
#include "parts/device_words.h"

#include <cmath>

namespace toft::diagram {

namespace {

std::string ohms(double x) { return significant(x, 3) + " Ω"; }
std::string percent(double x) { return significant(x, 3) + " %"; }

drawing::Spans loop_of_run() {
    using drawing::Script;
    return {{"R"}, {"1", Script::below}, {" + R"}, {"2", Script::below}};
}

/// What the loop is judged by: the limit of the overcurrent device, or that of an RCD.
double loop_limit(const answer::SchemeAnswer& scheme) {
    for (const answer::FindingAnswer& f : scheme.findings) {
        if (f.rule == "disconnection" && f.unit == "Ω" && f.limit) return *f.limit;
    }
    return scheme.run.figures.loop_impedance_limit_ohm;
}

bool cleared_by_rcd(const answer::SchemeAnswer& scheme) {
    const double limit = loop_limit(scheme);
    const double overcurrent = scheme.run.figures.loop_impedance_limit_ohm;
    return scheme.run.rcd && std::abs(limit - overcurrent) > 1e-6 * limit;
}

/// What a fault to earth at the far end of the run touches.
std::string faulty_part(const answer::SchemeAnswer& scheme) {
    if (!scheme.building.electrode) return "earth";
    const bool armour = scheme.run.stretches.empty() || scheme.run.stretches.back().armoured;
    return armour ? "the armour" : "the earth core";
}

/// Between lines and of all three at once, where the run has three.
void add_three_phase(const std::optional<answer::FaultRange>& line_line,
                     const std::optional<double>& three_lines, std::vector<Figure>& figures) {
    if (line_line) figures.push_back({"fault here, line to line", {}, range_words(*line_line)});
    if (three_lines) {
        figures.push_back({"fault here, three lines, largest",
                           {},
                           range_words(answer::FaultRange{*three_lines, *three_lines})});
    }
}

/// Who opens on residual current at the head.
std::string head_residual(const answer::SchemeAnswer& scheme) {
    return parts::opens_on_residual(scheme.run.device) ? "the RCBO" : "the RCD";
}

}  // namespace

std::vector<Figure> near_figures(const answer::RunAnswer& run) {
    const answer::FigureAnswers& f = run.figures;
    std::vector<Figure> figures{
        {"rating", drawing::symbol("I", "n"), significant(run.device.rating_a, 6) + " A"},
        {"breaking capacity", {}, significant(run.device.breaking_capacity_ka, 4) + " kA"},
        {"fault here, line to neutral", {}, range_words(f.near_line_neutral_a)},
        {"fault here, line to earth", {}, range_words(f.near_line_earth_a)},
    };
    add_three_phase(f.near_line_line_a, f.near_three_lines_a, figures);
    return figures;
}

std::vector<Figure> cable_figures(const answer::FigureAnswers& f, bool whole_run) {
    std::vector<Figure> figures;
    std::string rating = "cable's rating as laid";
    if (whole_run) {
        figures.push_back({"the whole run", {}, significant(f.length_m, 4) + " m"});
        rating = "least rating as laid, leg " + std::to_string(f.governing_leg);
    }
    const std::vector<Figure> figures_of_load{
        {"load current", drawing::symbol("I", "b"), significant(f.design_current_a, 3) + " A"},
        {rating, drawing::symbol("I", "z"), significant(f.rating_a, 3) + " A"},
        {"voltage drop", drawing::plain("ΔU"), percent(f.voltage_drop_percent)},
    };
    figures.insert(figures.end(), figures_of_load.begin(), figures_of_load.end());
    if (f.voltage_drop_total_percent != f.voltage_drop_percent) {
        figures.push_back({"drop from the origin", {}, percent(f.voltage_drop_total_percent)});
    }
    figures.push_back({"loop of the run, 20 °C", loop_of_run(), ohms(f.r1_plus_r2_20c_ohm)});
    return figures;
}

std::vector<Figure> loop_figures(const answer::SchemeAnswer& scheme) {
    const answer::FigureAnswers& f = scheme.run.figures;
    const bool by_rcd = cleared_by_rcd(scheme);
    std::vector<Figure> figures{{"loop, line to " + faulty_part(scheme), drawing::symbol("Z", "s"),
                                 ohms(f.loop_impedance_far_ohm)},
                                {by_rcd ? "at most, for " + head_residual(scheme) : "at most",
                                 {},
                                 ohms(loop_limit(scheme))}};
    if (!by_rcd) {
        figures.push_back({"at most when tested cold", {}, ohms(f.loop_impedance_test_limit_ohm)});
    }
    return figures;
}

std::vector<Figure> fault_figures(const answer::SchemeAnswer& scheme) {
    const answer::FigureAnswers& f = scheme.run.figures;
    std::vector<Figure> figures{
        {"fault here, line to neutral", {}, range_words(f.far_line_neutral_a)},
        {"fault here, line to " + faulty_part(scheme), {}, range_words(f.far_line_earth_a)}};
    add_three_phase(f.far_line_line_a, f.far_three_lines_a, figures);
    if (cleared_by_rcd(scheme) || !f.disconnection_s) {
        figures.push_back({"cleared by",
                           {},
                           scheme.run.rcd ? head_residual(scheme) + " at the head" : "not known"});
    } else {
        figures.push_back({"cleared in", {}, significant(*f.disconnection_s, 2) + " s"});
    }
    return figures;
}

}  // namespace toft::diagram
