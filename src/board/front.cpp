#include "board/front.h"

#include "board/bus.h"
#include "board/face.h"
#include "board/ink.h"
#include "board/wires.h"

#include <algorithm>

namespace toft::board {

namespace {

constexpr double lane = 18;        // left of the rails, for the neutral and the earth
constexpr double bus_lane = 16;    // right of them, for the lines from rail to rail
constexpr double ring_zone = 38;   // over the devices, for what leaves them
constexpr double core_step = 5.5;  // between the incoming cores
constexpr double label_high = 14;

/// Draws the front from the top down.
class Drawer {
public:
    Drawer(const FrontOf& of, double left, double right, double top)
        : of_(of), left_(left), right_(right), y_(top), rails_left_(left + lane) {
        const int fit = static_cast<int>((right - bus_lane - rails_left_) / place_wide + 1e-6);
        rails_ = rails_of(of.ways, {of.phases, of.spare, std::max(7, fit)});
        int longest = 0;
        for (const Rail& rail : rails_) longest = std::max(longest, rail.places());
        right_ = std::min(
            right, std::max(left + least_front, rails_left_ + longest * place_wide + bus_lane));
    }

    Front draw() {
        const double top = y_;
        earth_bar();
        for (const Rail& rail : rails_) draw_rail(rail);
        neutral_bar();
        Style shell = stroked(palette::ink, weight::firm);
        shell.fill = palette::wash;
        Items items{Group{{Rect{{left_, top, right_, y_}, shell, 4}}, {}, "", "enclosure", ""}};
        append(items, std::move(wires_));
        append(items, std::move(items_));
        return {std::move(items), y_, right_, entry_, places_of(rails_)};
    }

private:
    void label(const std::string& words) {
        y_ += label_high;
        items_.emplace_back(text({rails_left_, y_ - 3}, words, TextStyle{.size = 10}));
    }

    void earth_bar() {
        label("earth terminal");
        earth_at_ = y_ + 5;
        Strip strip = terminal_strip(of_.earth_screws, rails_left_ + 4, right_ - 24, y_);
        if (of_.own_electrode) {
            const double x = right_ - 12;
            append(wires_,
                   earth_wire({{rails_left_ + 4, earth_at_}, {x, earth_at_}, {x, y_ - 28}}));
        }
        items_.emplace_back(Group{std::move(strip.items), {}, "", "earth-terminal", ""});
        y_ = strip.foot + 4;
    }

    void neutral_bar() {
        label("neutral terminal");
        Strip strip =
            terminal_strip(static_cast<int>(of_.ways.size()) + 1, rails_left_ + 4, right_ - 24, y_);
        append(wires_, neutral_wire({neutral_from_,
                                     {left_ + 9, neutral_from_.y},
                                     {left_ + 9, y_ + 5},
                                     {rails_left_ + 4, y_ + 5}}));
        items_.emplace_back(Group{std::move(strip.items), {}, "", "neutral-terminal", ""});
        y_ = strip.foot + 6;
    }

    void draw_rail(const Rail& rail) {
        const bool first = &rail == &rails_.front();
        const double top = y_ + ring_zone;
        double x = rails_left_;
        if (first) incoming(top);
        Bus bus(of_.phases, top + face_high, first ? nullptr : &bus_feet_);
        for (std::size_t i = 0; i < rail.modules.size(); ++i) {
            const Module& module = rail.modules[i];
            append(items_,
                   face_items(face_of(module, of_.ways, of_.phases), {x, top}, module.places));
            module_wires(module, x, top, bus);
            x += place_wide * module.places;
        }
        const bool on = devices_after(rail);
        append(wires_,
               bus.drawn((first || bus_feet_.empty()) && !on ? 0 : right_ - 4, on, bus_feet_));
        append(items_, bus.letters());
        y_ = bus.foot();
    }

    /// True when a later rail has to be fed.
    bool devices_after(const Rail& rail) const {
        for (const Rail& later : rails_) {
            if (&later <= &rail) continue;
            for (const Module& module : later.modules) {
                if (module.holds == Holds::way) return true;
            }
        }
        return false;
    }

    void module_wires(const Module& module, double x, double top, Bus& bus) {
        const double wide = place_wide * module.places;
        if (module.holds == Holds::main_switch) {
            neutral_from_ = {x + place_wide / 2, top + face_high + 9};
            append(wires_, neutral_wire({{neutral_from_.x, top + face_high}, neutral_from_}));
            bus.letter("N", neutral_from_.x);
            if (of_.phases == 1) bus.letter("L", x + 1.5 * place_wide);
            for (int k = 0; k < of_.phases; ++k) bus.drop(k, x + (k + 1.5) * place_wide);
            return;
        }
        if (module.holds == Holds::residual) {
            const Point up{x - place_wide / 2, top};
            append(wires_, line_wire({up,
                                      up - Point{0, 8},
                                      {x + place_wide / 2, top - 8},
                                      {x + place_wide / 2, top}},
                                     module.line));
            outgoing(of_.ways[module.way], x + wide - place_wide / 2, top);
        }
        if (module.holds != Holds::way) return;
        const Way& way = of_.ways[module.way];
        for (int k = 0; k < module.places; ++k) {
            const int line = way.line == every_line ? k : module.line;
            bus.drop(std::min(line, of_.phases - 1), x + (k + 0.5) * place_wide);
        }
        if (!way.residual_apart()) outgoing(way, x + wide / 2, top);
    }

    /// What leaves a device, up to the way's number; arrow heads say which way the power goes.
    void outgoing(const Way& way, double x, double top) {
        const bool ring = way.facts && way.facts->kind == site::CircuitKind::socket_ring;
        const int wires = way.phases == 3 ? 3 : ring ? 2 : 1;
        const double number_at = top - ring_zone + ring_radius + 2;
        for (int i = 0; i < wires; ++i) {
            const double at = x + 6 * (i - (wires - 1) / 2.0);
            const int line = way.phases == 3 ? i : std::max(0, way.line);
            append(wires_, line_wire({{at, number_at}, {at, top}}, line));
        }
        append(items_, numbered_ring(way.number, {x, number_at}));
        if (!gives(way)) return;
        const double head = top - 5;
        const Style full = filled(palette::ink);
        const Polygon down{{{x - 5, head - 8}, {x + 5, head - 8}, {x, head}}, full};
        items_.emplace_back(Group{{down}, {}, "", "gives", "feeds the board"});
    }

    /// The incoming cable's cores from the wall to the main switch, the earth to its terminal.
    void incoming(double top) {
        const double lowest = top - 6;
        const double high = core_step * (of_.phases + 1);
        entry_ = {left_, lowest - high / 2};
        for (int k = 0; k <= of_.phases; ++k) {
            const double y = lowest - core_step * k;
            const double x = rails_left_ + (k + 0.5) * place_wide;
            const std::vector<Point> points{{left_ + 6, y}, {x, y}, {x, top}};
            append(wires_, k == 0 ? neutral_wire(points) : line_wire(points, k - 1));
        }
        if (of_.earth_carried) {
            const double y = lowest - high;
            append(wires_, earth_wire({{left_ + 6, y},
                                       {left_ + 11, y},
                                       {left_ + 11, earth_at_},
                                       {rails_left_ + 4, earth_at_}}));
        }
        Style nut = stroked(palette::ink, 1.2);
        nut.fill = palette::stone;
        const Box at{left_ - 6, entry_.y - high / 2 - 4, left_ + 6, entry_.y + high / 2 + 4};
        items_.emplace_back(
            Group{{Rect{at, nut, 2}}, {}, "", "entry", "where the incoming cable enters"});
    }

    const FrontOf& of_;
    double left_, right_, y_;
    double rails_left_;
    std::vector<Rail> rails_;
    Items items_;
    Items wires_;  // beneath the devices
    Point entry_{};
    Point neutral_from_{};
    double earth_at_ = 0;
    std::vector<Point> bus_feet_;
};

}  // namespace

Front front(const FrontOf& of, double left, double right, double top) {
    return Drawer(of, left, std::max(right, left + least_front), top).draw();
}

}  // namespace toft::board
