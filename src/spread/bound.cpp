#include "spread/bound.h"

#include <algorithm>
#include <cmath>

namespace toft::spread {

namespace {

constexpr int steps = 150;
constexpr int idle_steps = 8;  ///< steps without a better bound before steps are halved

/// What of `own` comes from one resource of a choice, and where on [low, high] it is least.
struct Share {
    double value;
    double in;
};

Share least_part(const Twig& twig, const Choice& choice, std::size_t i, double arriving,
                double leaving) {
    const double slope = (choice.sets[i] ? 0 : leaving) - arriving;
    const double in = slope >= 0 ? twig.low[i] : std::min(twig.high[i], choice.up[i]);
    return {slope * in + leaving * choice.amount[i], in};
}

struct Pick {
    std::uint32_t choice = 0;
    double own = no_limit;
};

Pick cheapest(const Compact& compact, std::uint32_t t, const Figures& arriving,
              const Figures& leaving) {
    const Twig& twig = compact.twigs[t];
    Pick pick;
    for (std::uint32_t c = 0; c < twig.choices.size(); ++c) {
        double own = twig.choices[c].price;
        for (std::size_t i = 0; i < compact.resources; ++i) {
            own += least_part(twig, twig.choices[c], i, arriving[i], leaving[i]).value;
        }
        if (own < pick.own) pick = {c, own};
    }
    return pick;
}

void add_up(const Compact& compact, Slopes& slopes) {
    slopes.leaving.assign(compact.twigs.size(), Figures{});
    slopes.at_root = {};
    for (std::size_t t = compact.twigs.size(); t-- > 0;) {
        const std::uint32_t parent = compact.twigs[t].parent;
        Figures& to = parent == none ? slopes.at_root : slopes.leaving[parent];
        for (std::size_t i = 0; i < compact.resources; ++i) to[i] += slopes.arriving[t][i];
    }
}

/// Lambda of each twig: by how much what arrives is dearer than what leaves.
struct Ascent {
    const Compact& compact;
    std::vector<Figures> dearer;
    std::vector<std::array<bool, most_resources>> may_fall;
    Figures scale{};
    Slopes slopes;
    std::vector<std::uint32_t> picks;
    std::vector<Figures> gradient;

    explicit Ascent(const Compact& c)
        : compact(c), dearer(c.twigs.size()), may_fall(c.twigs.size()), gradient(c.twigs.size()) {
        slopes.arriving.resize(c.twigs.size());
        slopes.own.resize(c.twigs.size());
        picks.resize(c.twigs.size());
        for (std::size_t t = 0; t < c.twigs.size(); ++t) {
            const Twig& twig = c.twigs[t];
            for (std::size_t i = 0; i < c.resources; ++i) {
                scale[i] = std::max(scale[i], twig.high[i] - twig.low[i]);
                for (const Choice& choice : twig.choices) {
                    may_fall[t][i] = may_fall[t][i] || choice.sets[i];
                }
            }
        }
        for (double& s : scale) s = s > 0 ? s : 1;
    }

    void raise_slopes() {
        slopes.leaving.assign(compact.twigs.size(), Figures{});
        slopes.at_root = {};
        for (std::size_t t = compact.twigs.size(); t-- > 0;) {
            const std::uint32_t parent = compact.twigs[t].parent;
            Figures& to = parent == none ? slopes.at_root : slopes.leaving[parent];
            for (std::size_t i = 0; i < compact.resources; ++i) {
                const double p = std::max(0.0, slopes.leaving[t][i] + dearer[t][i]);
                dearer[t][i] = p - slopes.leaving[t][i];
                slopes.arriving[t][i] = p;
                to[i] += p;
            }
        }
    }

    void look() {
        raise_slopes();
        slopes.least = compact.settled_price;
        for (std::size_t i = 0; i < compact.resources; ++i) {
            slopes.least += slopes.at_root[i] * compact.at_root[i];
        }
        for (std::uint32_t t = 0; t < compact.twigs.size(); ++t) {
            const Pick pick = cheapest(compact, t, slopes.arriving[t], slopes.leaving[t]);
            picks[t] = pick.choice;
            slopes.own[t] = pick.own;
            slopes.least += pick.own;
        }
    }

    /// By how much what the picks send misses what the next pick was reckoned with, added up along
    /// the way. Returns its square, resources scaled.
    double set_gradient() {
        double square = 0;
        for (std::uint32_t t = 0; t < compact.twigs.size(); ++t) {
            const Twig& twig = compact.twigs[t];
            const std::uint32_t parent = twig.parent;
            for (std::size_t i = 0; i < compact.resources; ++i) {
                double sent = compact.at_root[i];
                double before = 0;
                if (parent != none) {
                    const Choice& up = compact.twigs[parent].choices[picks[parent]];
                    sent = up.amount[i] + (up.sets[i] ? 0 : reckoned_in(parent, i));
                    before = gradient[parent][i];
                }
                gradient[t][i] = before + sent - reckoned_in(t, i);
                const bool held = dearer[t][i] <= 0 && !may_fall[t][i] && gradient[t][i] < 0;
                const bool fixed = !may_fall[t][i] && !twig.limits[i];
                const double g = held || fixed ? 0 : gradient[t][i] / scale[i];
                square += g * g;
            }
        }
        return square;
    }

    double reckoned_in(std::uint32_t t, std::size_t i) const {
        const Twig& twig = compact.twigs[t];
        return least_part(twig, twig.choices[picks[t]], i, slopes.arriving[t][i],
                          slopes.leaving[t][i])
            .in;
    }

    void step(double length) {
        for (std::size_t t = 0; t < compact.twigs.size(); ++t) {
            for (std::size_t i = 0; i < compact.resources; ++i) {
                if (!may_fall[t][i] && !compact.twigs[t].limits[i]) continue;
                double& d = dearer[t][i];
                d += length * gradient[t][i] / (scale[i] * scale[i]);
                if (!may_fall[t][i]) d = std::max(d, 0.0);
            }
        }
    }
};

double dearest(const Compact& compact) {
    double sum = 0;
    for (const Twig& twig : compact.twigs) {
        double most = 0;
        for (const Choice& choice : twig.choices) most = std::max(most, choice.price);
        sum += most;
    }
    return sum;
}

}  // namespace

double own_of(const Compact& compact, const Slopes& slopes, std::uint32_t twig,
              const Choice& choice) {
    double own = choice.price;
    for (std::size_t i = 0; i < compact.resources; ++i) {
        own += least_part(compact.twigs[twig], choice, i, slopes.arriving[twig][i],
                          slopes.leaving[twig][i])
                   .value;
    }
    return own;
}

void evaluate(const Compact& compact, Slopes& slopes) {
    add_up(compact, slopes);
    slopes.own.resize(compact.twigs.size());
    slopes.least = compact.settled_price;
    for (std::size_t i = 0; i < compact.resources; ++i) {
        slopes.least += slopes.at_root[i] * compact.at_root[i];
    }
    for (std::uint32_t t = 0; t < compact.twigs.size(); ++t) {
        slopes.own[t] = cheapest(compact, t, slopes.arriving[t], slopes.leaving[t]).own;
        slopes.least += slopes.own[t];
    }
}

Trial tried(const Compact& compact, const Slopes& slopes) {
    Trial trial;
    trial.price = 0;
    std::vector<Figures> sent(compact.twigs.size());
    for (std::size_t t = 0; t < compact.twigs.size(); ++t) {
        const Twig& twig = compact.twigs[t];
        const Figures& in = twig.parent == none ? compact.at_root : sent[twig.parent];
        double best = no_limit;
        std::uint32_t pick = none;
        for (std::uint32_t c = 0; c < twig.choices.size(); ++c) {
            const Choice& choice = twig.choices[c];
            double value = choice.price;
            bool works = true;
            for (std::size_t i = 0; i < compact.resources && works; ++i) {
                works = in[i] <= choice.up[i];
                value += slopes.leaving[t][i] * (choice.amount[i] + (choice.sets[i] ? 0 : in[i]));
            }
            if (works && (pick == none || value < best)) {
                best = value;
                pick = c;
            }
        }
        if (pick == none) return {};
        const Choice& choice = twig.choices[pick];
        for (std::size_t i = 0; i < compact.resources; ++i) {
            sent[t][i] = choice.amount[i] + (choice.sets[i] ? 0 : in[i]);
        }
        trial.picks.push_back(pick);
        trial.price += choice.price;
    }
    return trial;
}

Bounded bounded(const Compact& compact) {
    Ascent ascent(compact);
    Bounded found;
    found.slopes.least = -no_limit;
    const double far = dearest(compact);
    double share = 1;
    int idle = 0;
    for (int n = 0; n < steps; ++n) {
        ascent.look();
        if (ascent.slopes.least > found.slopes.least) {
            found.slopes = ascent.slopes;
            idle = 0;
        } else if (++idle >= idle_steps) {
            share /= 2;
            idle = 0;
        }
        Trial trial = tried(compact, ascent.slopes);
        if (trial.price < found.best.price) found.best = std::move(trial);
        const double square = ascent.set_gradient();
        const double gap = std::min(found.best.price, far) - ascent.slopes.least;
        if (square <= 0 || gap <= 1e-9 * far) break;
        ascent.step(share * gap / square);
    }
    return found;
}

}  // namespace toft::spread
