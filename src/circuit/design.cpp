#include "circuit/design.h"

#include "base/limit.h"
#include "device/curve.h"
#include "network/drop.h"
#include "network/loop.h"
#include "network/motor_start.h"
#include "network/source_rise.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace toft::circuit {

namespace {

/// The largest current the device is sure to hold for a moment.
const Cited<Amperes>* held_for(const tables::Device& device, Seconds moment) {
    const Cited<Amperes>* most = nullptr;
    for (const tables::CurvePoint& p : device.holds) {
        if (p.time < moment) continue;
        if (!most || p.current.value > most->value) most = &p.current;
    }
    return most;
}

/// A circuit and what feeds it.
template <class L>
struct Behind {
    const tables::Catalogue& catalogue;
    const CircuitSetting<L>& setting;
    const Feed<L>& feed;
};

/// One option of a circuit behind one feed.
template <class L>
class Look {
public:
    Look(L& ledger, const Behind<L>& behind, const Option& option, const Conductors<L>& conductors,
         CircuitDesign<L>& out)
        : ledger_(ledger),
          catalogue_(behind.catalogue),
          s_(behind.setting),
          feed_(behind.feed),
          device_(*option.device),
          c_(conductors),
          out_(out),
          n_(behind.setting.number) {}

    void all() {
        all_but_heat();
        the_rest();
    }

    /// What takes least to work out.
    void all_but_heat() {
        const auto in =
            ledger_.stated({"In", "rating of the circuit's device", n_}, device_.rating, "scheme");
        against(Matter::carries, s_.ib, in);
        rating(in);
        breaking();
        if (s_.duty == Duty::generates) {
            rise();
        } else {
            drop();
        }
        disconnect();
    }

    void the_rest() {
        heat();
        if (s_.duty == Duty::starts) start();
    }

    /// Whether nothing is over its limit, not even what merely cautions. What is worked out is as
    /// after `all` where that is so; where it is not, nothing is looked at any further.
    bool meets_all() {
        const auto in =
            ledger_.stated({"In", "rating of the circuit's device", n_}, device_.rating, "scheme");
        against(Matter::carries, s_.ib, in);
        rating(in);
        if (over(Matter::carries) || over(Matter::rating)) return false;
        breaking();
        if (over(Matter::breaking)) return false;
        const bool generates = s_.duty == Duty::generates;
        generates ? rise() : drop();
        if (over(generates ? Matter::rise : Matter::drop)) return false;
        disconnect();
        const bool residual_alone = out_.by_residual && out_.at(Matter::disconnect).applies;
        if (residual_alone || over(Matter::disconnect)) return false;
        heat();
        if (over(Matter::heat)) return false;
        if (s_.duty == Duty::starts) start();
        return !over(Matter::start_trip) && !over(Matter::start_dip);
    }

private:
    bool over(Matter matter) const {
        const Judged<L>& j = out_.at(matter);
        return j.applies && !within(plain(j.use), 1.0);
    }

    template <class V, class W>
    void against(Matter matter, const V& value, const W& limit) {
        Judged<L>& j = out_.judged[static_cast<std::size_t>(matter)];
        j.applies = true;
        j.value = number_of(plain(value));
        j.limit = number_of(plain(limit));
        j.use = ledger_.let({"use", "share of the limit that is used", n_}, value / limit);
    }

    /// A ring's cable need not carry the device's whole rating: the load divides.
    void rating(const ValueIn<L, Amperes>& in) {
        if (!s_.ring) return against(Matter::rating, in, c_.iz);
        against(Matter::rating,
                ledger_.table({"Iz.ring", "least rating of a ring's cable", n_, "", "433.1.204"},
                              catalogue_.limits.ring_cable),
                c_.iz);
    }

    void breaking() {
        against(Matter::breaking, feed_.short_most,
                ledger_.table({"Icn", "breaking capacity of the device", n_}, device_.breaking));
    }

    void drop() {
        const auto u = ledger_.let({"U.board", "voltage at the board", n_}, feed_.u0 - feed_.drop);
        const auto own = network::line_drop(
            ledger_, u, network::Loading<L>{s_.drop_current, s_.power_factor, n_}, c_.load);
        out_.drop_own = ledger_.let({"drop.own", "voltage drop of the circuit itself", n_, "%"},
                                    100.0 * own / feed_.u0);
        const auto whole =
            ledger_.let({"drop", "voltage drop from the origin to the last point", n_, "%", "525"},
                        100.0 * (feed_.drop + own) / feed_.u0);
        against(Matter::drop, whole, s_.drop_limit);
    }

    /// Line, neutral and everything before them, one line's share where three are loaded alike.
    ImpedanceIn<L> way() {
        if (s_.phases == 1) return feed_.run + c_.load;
        return {feed_.run.r / 2.0 + c_.load.r, feed_.run.x / 2.0 + c_.load.x};
    }

    void rise() {
        const auto volts = network::source_rise(
            ledger_, {"U.rise", "voltage added at the source", n_}, feed_.u0, s_.ib, way());
        against(Matter::rise,
                ledger_.let({"rise", "voltage rise from the origin to the source", n_, "%"},
                            100.0 * volts / feed_.u0),
                s_.rise_limit);
    }

    void start() {
        if (const auto* held = held_for(device_, catalogue_.limits.start_moment.value)) {
            against(Matter::start_trip, s_.start,
                    ledger_.table({"I.held", "current the device is sure to hold for a moment", n_},
                                  *held));
        }
        const auto z = network::largest_loop(
            ledger_, {"Z.start", "impedance before the motor, the largest", n_},
            s_.phases == 3 ? feed_.source_line : feed_.source, way());
        against(Matter::start_dip,
                network::starting_dip(
                    ledger_, {"dip", "voltage missing at the motor while it starts", n_, "%"},
                    feed_.u0, s_.start, z),
                s_.dip_limit);
    }

    ValueIn<L, Ohms> loop(const Name& name, const std::array<ValueIn<L, Ohms>, heats>& board,
                          std::size_t h, const std::array<ImpedanceIn<L>, heats>& back) {
        return network::largest_loop(ledger_, name, board[h], c_.line[h] + back[h]);
    }

    void disconnect() {
        if (!feed_.by_conductor) {
            out_.by_residual = true;
            return;
        }
        out_.zs = loop({"Zs", "earth fault loop at the last point", n_, "", "411.4.4"}, feed_.zs, 0,
                       c_.back);
        const auto ia = device::operating_current(
            ledger_, {"Ia", "current that operates the device in time", n_, "", "Appendix 3"},
            device_, time_allowed(catalogue_.limits, *s_.facts, device_.rating).value);
        const auto most =
            ledger_.let({"Zs.max", "largest loop that still operates it", n_, "", "411.4.4"},
                        feed_.c_min * feed_.u0 / ia);
        against(Matter::disconnect, out_.zs, most);
        const Judged<L>& j = out_.at(Matter::disconnect);
        if (within(j.value, j.limit) || !device_.residual) return;
        residual();
    }

    /// What the residual current device itself allows; the short circuit is judged by its heat.
    void residual() {
        const auto touch = ledger_.table({"U.touch", "touch voltage allowed", n_},
                                         catalogue_.limits.touch_voltage);
        const auto idn =
            ledger_.table({"IdN", "residual current rating", n_}, device_.residual->sensitivity);
        against(Matter::disconnect, out_.zs,
                ledger_.let(
                    {"Zs.rcd", "largest loop with that residual current device", n_, "", "411.5.3"},
                    touch / idn));
        out_.by_residual = true;
    }

    using Energy = ValueIn<L, AmpereSquareSeconds>;
    using Loops = std::array<ValueIn<L, Ohms>, heats>;
    using Back = std::array<ImpedanceIn<L>, heats>;

    /// A kind of fault: its loop up to the board, its way back on the circuit, what that
    /// withstands, and the symbols of its lines.
    struct Fault {
        const Loops& board;
        const Back& back;
        const Energy& stands;
        bool earth;
        const char *near, *energy[heats], *current[heats], *loop[heats];
    };

    Fault short_circuit() const {
        return {feed_.zn,
                c_.line,
                c_.live_stands,
                false,
                "I2t.near",
                {"I2t.first", "I2t.early", "I2t.far"},
                {"In.first", "In.early", "In.least"},
                {"Zn.first", "Zn.early", "Zn.hot"}};
    }
    Fault earth_fault() const {
        return {feed_.zs,
                c_.back,
                c_.back_stands,
                true,
                "I2t.e.near",
                {"I2t.e.first", "I2t.e.early", "I2t.e.far"},
                {"Ie.first", "Ie.early", "Ie.least"},
                {"Zs.first", "Zs.early", "Zs.hot"}};
    }

    Energy by_device(const char* symbol, const char* meaning, const ValueIn<L, Amperes>& i,
                     bool earth) {
        const auto own = device::let_through(ledger_, {symbol, meaning, n_}, device_, i);
        if (!earth || !device_.residual) return own;
        const auto t =
            ledger_.table({"t.rcd", "longest break time of the residual current device", n_},
                          device_.residual->times.longest_1);
        return ledger_.let(
            {"I2t.rcd", "energy until the device has opened either way", n_, "", "", symbol},
            least(own, squared(i) * t));
    }

    ValueIn<L, Amperes> least_current(const Fault& f, std::size_t h) {
        return network::fault_current(
            ledger_, {f.current[h], "smallest fault current at the last point", n_}, feed_.c_min,
            feed_.u0, loop({f.loop[h], "loop of that fault", n_}, f.board, h, f.back));
    }

    /// Energy of the smallest fault, as for a run: one that ends before it has used a tenth of what
    /// is withstood never meets conductors hotter than that.
    Energy smallest(const Fault& f) {
        const auto first = by_device(f.energy[0], "energy of it, conductors at working temperature",
                                     least_current(f, 0), f.earth);
        const auto early = by_device(f.energy[1], "energy of it, conductors hardly warmed",
                                     least_current(f, 1), f.earth);
        const auto brief = ledger_.let({"I2t.brief", "the larger of the two", n_, "", "", f.near},
                                       most(first, early));
        if (plain(brief) <= plain(f.stands) * early_share) return brief;
        return by_device(f.energy[2], "energy of it, conductors hot", least_current(f, 2), f.earth);
    }

    /// The board's largest fault is no smaller than that at the last point, though an open fact
    /// read at its better end in each figure may say so.
    ValueIn<L, double> heat_of(const Fault& f, const ValueIn<L, Amperes>& at_board,
                               const Name& name) {
        const auto most_there =
            ledger_.let({"I.board", "largest fault current at the board", n_, "", "", f.near},
                        most(at_board, least_current(f, 0)));
        const auto near =
            ledger_.let({"I2t.board", "energy of a fault at the board", n_, "", "", f.near},
                        by_device(f.near, "energy it lets through", most_there, f.earth));
        const auto far = ledger_.let(
            {"I2t.last", "energy of a fault at the last point", n_, "", "", f.near}, smallest(f));
        return ledger_.let(name, most(near, far) / f.stands);
    }

    void heat() {
        auto share = heat_of(
            short_circuit(), feed_.short_most,
            {"heat.live", "fault heat over what a live conductor withstands", n_, "", "434.5.2"});
        if (feed_.by_conductor) {
            const auto back =
                heat_of(earth_fault(), feed_.earth_most,
                        {"heat.cpc", "fault heat over what the protective conductor withstands", n_,
                         "", "543.1.3"});
            share = ledger_.let({"heat", "the worse of the two", n_}, most(share, back));
        }
        against(Matter::heat, share,
                ledger_.stated({"heat.max", "all that is withstood", n_}, 1.0, "by definition"));
    }

    L& ledger_;
    const tables::Catalogue& catalogue_;
    const CircuitSetting<L>& s_;
    const Feed<L>& feed_;
    const tables::Device& device_;
    const Conductors<L>& c_;
    CircuitDesign<L>& out_;
    int n_;
};

/// How far an option is from meeting all: nothing over, only cautions over, or the worst use.
struct Standing {
    int tier = 0;
    double worst = 0;
};

template <class L>
Standing standing_of(const CircuitDesign<L>& d, bool dip_wished) {
    Standing s;
    if (d.by_residual && d.at(Matter::disconnect).applies) s.tier = 1;
    for (std::size_t m = 0; m < matters; ++m) {
        const Judged<L>& j = d.judged[m];
        if (!j.applies || within(plain(j.use), 1.0)) continue;
        const bool mild = only_cautioned(static_cast<Matter>(m), dip_wished);
        s.tier = std::max(s.tier, mild ? 1 : 2);
        if (!mild) s.worst = std::max(s.worst, plain(j.use));
    }
    return s;
}

bool nearer(const Standing& a, const Standing& b) {
    return a.tier < b.tier || (a.tier == b.tier && a.worst < b.worst);
}

const CircuitSetting<Silent>& bare(const CircuitSetting<Silent>& s) { return s; }

const Feed<Silent>& bare(const Feed<Silent>& f) { return f; }

ImpedanceIn<Silent> bare(const ImpedanceIn<Recording>& z) { return {plain(z.r), plain(z.x)}; }

Feed<Silent> bare(const Feed<Recording>& f) {
    Feed<Silent> out;
    out.three_phase = f.three_phase;
    out.by_conductor = f.by_conductor;
    out.u0 = plain(f.u0);
    out.c_min = plain(f.c_min);
    out.drop = plain(f.drop);
    out.run = bare(f.run);
    out.source = plain(f.source);
    out.source_line = plain(f.source_line);
    for (std::size_t h = 0; h < heats; ++h) {
        out.zn[h] = plain(f.zn[h]);
        out.zs[h] = plain(f.zs[h]);
    }
    out.short_most = plain(f.short_most);
    out.earth_most = plain(f.earth_most);
    return out;
}

CircuitSetting<Silent> bare(const CircuitSetting<Recording>& s) {
    CircuitSetting<Silent> out;
    out.facts = s.facts;
    out.place = s.place;
    out.number = s.number;
    out.phases = s.phases;
    out.ring = s.ring;
    out.duty = s.duty;
    out.options = s.options;
    out.conductors = s.conductors;
    out.surroundings = plain(s.surroundings);
    out.ib = plain(s.ib);
    out.drop_current = plain(s.drop_current);
    out.power_factor = plain(s.power_factor);
    out.length = plain(s.length);
    out.drop_limit = plain(s.drop_limit);
    out.start = plain(s.start);
    out.dip_wished = s.dip_wished;
    out.dip_limit = plain(s.dip_limit);
    out.rise_limit = plain(s.rise_limit);
    return out;
}

/// Takes back what an earlier look found.
template <class L>
void clear(CircuitDesign<L>& d) {
    d.by_residual = false;
    for (auto& j : d.judged) j.applies = false;
}

/// The first option that meets all, worked out in `d`; none where none does.
std::optional<std::size_t> first_that_serves(const Behind<Silent>& behind,
                                             CircuitDesign<Silent>& d) {
    Silent silent;
    const auto& options = behind.setting.options;
    for (std::size_t i = 0; i < options.size(); ++i) {
        clear(d);
        Look<Silent> look(silent, behind, options[i], behind.setting.conductors[i], d);
        if (look.meets_all()) return i;
    }
    return std::nullopt;
}

/// Index of the option that comes nearest where none meets all.
std::size_t nearest_option(const Behind<Silent>& behind) {
    Silent silent;
    const CircuitSetting<Silent>& s = behind.setting;
    CircuitDesign<Silent> d;
    std::size_t best = 0;
    Standing nearest{3, std::numeric_limits<double>::infinity()};
    for (std::size_t i = 0; i < s.options.size(); ++i) {
        clear(d);
        Look<Silent> look(silent, behind, s.options[i], s.conductors[i], d);
        look.all_but_heat();
        // Whatever else is looked at only makes it stand worse.
        if (!nearer(standing_of(d, s.dip_wished), nearest)) continue;
        look.the_rest();
        const Standing found = standing_of(d, s.dip_wished);
        if (!nearer(found, nearest)) continue;
        nearest = found;
        best = i;
    }
    return best;
}

/// The conductors of the option picked: known already, or written down anew.
const Conductors<Silent>& picked(Silent&, const tables::Catalogue&, const CircuitSetting<Silent>& s,
                                 std::size_t i) {
    return s.conductors[i];
}
Conductors<Recording> picked(Recording& ledger, const tables::Catalogue& catalogue,
                             const CircuitSetting<Recording>& s, std::size_t i) {
    return conductors(ledger, laid_for(ledger, catalogue, s, *s.options[i].cable));
}

/// Where options are looked at: in the design itself, unless that is to have working.
struct Nowhere {};
CircuitDesign<Silent>& worked_in(CircuitDesign<Silent>& out, Nowhere&) { return out; }
CircuitDesign<Silent>& worked_in(CircuitDesign<Recording>&, CircuitDesign<Silent>& aside) {
    return aside;
}

}  // namespace

bool only_cautioned(Matter matter, bool dip_wished) {
    return matter == Matter::rise || matter == Matter::start_trip ||
           (matter == Matter::start_dip && !dip_wished);
}

const Cited<Seconds>& time_allowed(const tables::Limits& limits, const site::Circuit& circuit,
                                   Amperes rating) {
    const bool sockets = circuit.kind == site::CircuitKind::socket_ring ||
                         circuit.kind == site::CircuitKind::socket_radial;
    const Amperes scope = sockets ? limits.final_sockets.value : limits.final_others.value;
    return rating <= scope ? limits.disconnection_final : limits.disconnection_tn;
}

template <class L>
void design(L& ledger, const tables::Catalogue& catalogue, const CircuitSetting<L>& s,
            const Feed<L>& feed, CircuitDesign<L>& out) {
    const CircuitSetting<Silent>& bare_setting = bare(s);
    const Feed<Silent>& bare_feed = bare(feed);
    const Behind<Silent> behind{catalogue, bare_setting, bare_feed};
    std::conditional_t<L::records, CircuitDesign<Silent>, Nowhere> aside;
    const auto serves = first_that_serves(behind, worked_in(out, aside));
    const std::size_t i = serves ? *serves : nearest_option(behind);
    out.place = s.place;
    out.option = s.options[i];
    out.wired = plain(s.length) * (s.ring ? 4.0 : 1.0);
    out.conductors = picked(ledger, catalogue, s, i);
    if (serves && !L::records) return;  // all is worked out already
    clear(out);
    Look<L>(ledger, {catalogue, s, feed}, out.option, out.conductors, out).all();
}

template void design(Silent&, const tables::Catalogue&, const CircuitSetting<Silent>&,
                     const Feed<Silent>&, CircuitDesign<Silent>&);
template void design(Recording&, const tables::Catalogue&, const CircuitSetting<Recording>&,
                     const Feed<Recording>&, CircuitDesign<Recording>&);

}  // namespace toft::circuit
