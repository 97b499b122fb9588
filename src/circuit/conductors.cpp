#include "circuit/conductors.h"

#include "cable/drop.h"
#include "cable/fault_heat.h"
#include "cable/resistance.h"

namespace toft::circuit {

namespace {

using tables::FaultHeat;

struct Metal {
    const tables::Material& material;
    const FaultHeat& limits;
    const Cited<OhmsPerMetre>& r20;
};

/// Symbols of one conductor's lines, those of each heat apart.
struct Symbols {
    const char *r20, *alpha, *initial, *final, *k, *s, *stands;
    struct AtHeat {
        const char *rise, *r, *z, *x;
    } at[heats];
};

constexpr Symbols line_symbols{"r20.line",
                               "alpha.line",
                               "ti.line",
                               "tf.line",
                               "k.live",
                               "S.live",
                               "k2S2.live",
                               {{"rise.line.work", "r.line.work", "R.line.work", "X.line.work"},
                                {"rise.line.early", "r.line.early", "R.line.early", "X.line.early"},
                                {"rise.line.hot", "r.line.hot", "R.line.hot", "X.line.hot"}}};
constexpr Symbols back_symbols{"r20.cpc",
                               "alpha.cpc",
                               "ti.cpc",
                               "tf.cpc",
                               "k.cpc",
                               "S.cpc",
                               "k2S2.cpc",
                               {{"rise.cpc.work", "r.cpc.work", "R.cpc.work", "X.cpc.work"},
                                {"rise.cpc.early", "r.cpc.early", "R.cpc.early", "X.cpc.early"},
                                {"rise.cpc.hot", "r.cpc.hot", "R.cpc.hot", "X.cpc.hot"}}};

constexpr double shares[heats] = {0, early_share, 1};

template <class L>
class Maker {
public:
    Maker(L& ledger, const Laid<L>& laid)
        : ledger_(ledger), laid_(laid), make_(tables::make_of(laid.catalogue, laid.cable)) {}

    Conductors<L> all() {
        Conductors<L> out;
        out.iz = rating();
        out.load = cable::leg_drop(
                       ledger_, cable::DropInput<L>{laid_.catalogue.cable_constants, make_,
                                                    laid_.cable.duty(laid_.phases), laid_.factors,
                                                    laid_.phases, heating(), neutral_share(),
                                                    laid_.surroundings, laid_.length, laid_.number})
                       .loop;
        const auto& constants = laid_.catalogue.cable_constants;
        const Metal line{constants.material(make_.metal), make_.live, laid_.cable.r20};
        const Metal back{constants.material(make_.metal), make_.core, laid_.cable.cpc_r20};
        const auto line_cold = ledger_.table(
            {line_symbols.r20, "line conductor per metre at 20 °C", laid_.number}, line.r20);
        const auto back_cold = ledger_.table(
            {back_symbols.r20, "protective conductor per metre at 20 °C", laid_.number}, back.r20);
        for (std::size_t h = 0; h < heats; ++h) {
            out.line[h] = at_heat(line_symbols, line, line_cold, h);
            out.back[h] = at_heat(back_symbols, back, back_cold, h);
        }
        out.r1_r2_cold = ledger_.let(
            {"R1.R2", "line and protective conductor of the circuit at 20 °C", laid_.number},
            (line_cold + back_cold) * laid_.length);
        out.live_stands = stands(line_symbols, "what a live conductor withstands", make_.live,
                                 laid_.cable.section);
        out.back_stands = stands(back_symbols, "what the protective conductor withstands",
                                 make_.core, laid_.cable.cpc);
        return out;
    }

private:
    ValueIn<L, Amperes> rating() {
        const auto alike =
            cable::leg_rating(ledger_, laid_.cable.duty(laid_.phases), laid_.factors, laid_.number);
        const Name name{"Iz", "rating of the circuit's cable", laid_.number, "", "433.1.1"};
        if (!laid_.neutral.loaded) return ledger_.let(name, alike);
        return ledger_.let(name, alike * laid_.neutral.leaves);
    }

    ValueIn<L, Amperes> heating() {
        if (!laid_.neutral.loaded) return laid_.current;
        return ledger_.let(
            {"I.heats", "current that would heat as much without harmonics", laid_.number},
            laid_.current / laid_.neutral.leaves);
    }

    /// Three lines of one circuit are loaded alike: of the neutral's current none is met but third
    /// harmonics.
    ValueIn<L, double> neutral_share() {
        if (laid_.neutral.loaded) return laid_.neutral.over_line;
        return ledger_.stated({"n.N", "current of the neutral over that of the line", laid_.number},
                              laid_.phases == 3 ? 0.0 : 1.0, "one circuit");
    }

    ImpedanceIn<L> at_heat(const Symbols& symbols, const Metal& metal,
                           const ValueIn<L, OhmsPerMetre>& r20, std::size_t heat) {
        const int n = laid_.number;
        const auto initial =
            ledger_.table({symbols.initial, "temperature of the conductor before a fault", n},
                          metal.limits.initial);
        const auto final =
            ledger_.table({symbols.final, "highest temperature of the conductor after a fault", n},
                          metal.limits.final);
        const auto t = initial + (final - initial) * shares[heat];
        const auto alpha = ledger_.table({symbols.alpha, "temperature coefficient at 20 °C", n},
                                         metal.material.alpha20);
        const auto rise = cable::resistance_rise(
            ledger_, {symbols.at[heat].rise, "growth of resistance up to that temperature", n},
            alpha, t);
        const auto r = cable::resistance_at(
            ledger_, {symbols.at[heat].r, "resistance of the conductor per metre then", n}, r20,
            rise);
        const auto x =
            ledger_.table({"x.core", "reactance of a conductor per metre", n}, laid_.cable.x);
        return {
            ledger_.let({symbols.at[heat].z, "resistance of the conductor to the last point", n},
                        r * laid_.length),
            ledger_.let({symbols.at[heat].x, "reactance of the conductor to the last point", n},
                        x * laid_.length)};
    }

    ValueIn<L, AmpereSquareSeconds> stands(const Symbols& symbols, const char* meaning,
                                           const FaultHeat& heat, SquareMillimetres section) {
        const auto k = ledger_.table({symbols.k, "fault heat constant", laid_.number}, heat.k);
        const auto s = ledger_.stated({symbols.s, "section of the conductor", laid_.number},
                                      section, "scheme");
        return cable::withstand(ledger_, {symbols.stands, meaning, laid_.number}, k, s);
    }

    L& ledger_;
    const Laid<L>& laid_;
    const tables::Make& make_;
};

}  // namespace

template <class L>
Conductors<L> conductors(L& ledger, const Laid<L>& laid) {
    return Maker<L>(ledger, laid).all();
}

template Conductors<Silent> conductors(Silent&, const Laid<Silent>&);
template Conductors<Recording> conductors(Recording&, const Laid<Recording>&);

}  // namespace toft::circuit
