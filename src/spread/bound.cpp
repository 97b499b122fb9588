#include "spread/bound.h"

#include <algorithm>
#include <cmath>

namespace toft::spread {

namespace {

constexpr int idle_steps = 8;  ///< without a better bound before steps are halved
constexpr double shortest = 1e-3;
constexpr int try_every = 5;

/// What of `own` comes from one resource of a choice, and where on [low, high] it is least.
struct Share {
    double value;
    double in;
};

Share least_share(const Twig& twig, const Choice& choice, std::size_t i, const Slopes& slopes,
                  std::size_t t) {
    const double leaving = slopes.leaving[t][i];
    const double slope = (choice.sets[i] ? 0 : leaving) - slopes.arriving[t][i];
    const double in = slope >= 0 ? twig.low[i] : std::min(twig.high[i], choice.up[i]);
    return {slope * in + leaving * choice.amount[i], in};
}

/// Choices of all twigs one after the other, for a loop that is run many times.
struct Row {
    explicit Row(const Compact& compact) : k(compact.resources) {
        for (const Twig& twig : compact.twigs) {
            first.push_back(static_cast<std::uint32_t>(price.size()));
            bool is_plain = true;
            for (std::size_t i = 0; i < k; ++i) is_plain = is_plain && !twig.limits[i];
            for (const Choice& choice : twig.choices) {
                price.push_back(choice.price);
                for (std::size_t i = 0; i < k; ++i) {
                    amount.push_back(choice.amount[i]);
                    up.push_back(std::min(choice.up[i], twig.high[i]));
                    sets.push_back(choice.sets[i]);
                    is_plain = is_plain && !choice.sets[i];
                }
            }
            plain.push_back(is_plain);
        }
        first.push_back(static_cast<std::uint32_t>(price.size()));
    }

    std::size_t k;
    std::vector<std::uint32_t> first;
    std::vector<double> price;
    std::vector<double> amount;
    std::vector<double> up;
    std::vector<unsigned char> sets;
    std::vector<unsigned char> plain;  ///< of a twig: only adds, and no limit of its own binds
};

/// Subgradient steps on `dearer`: by how much what arrives at a branch is dearer than what leaves.
class Ascent {
public:
    explicit Ascent(const Compact& compact)
        : compact_(compact),
          row_(compact),
          dearer_(compact.twigs.size()),
          may_fall_(compact.twigs.size()),
          gradient_(compact.twigs.size()),
          direction_(compact.twigs.size()),
          picks_(compact.twigs.size()) {
        slopes.arriving.resize(compact.twigs.size());
        slopes.own.resize(compact.twigs.size());
        for (std::size_t t = 0; t < compact.twigs.size(); ++t) {
            const Twig& twig = compact.twigs[t];
            for (std::size_t i = 0; i < compact.resources; ++i) {
                scale_[i] = std::max(scale_[i], twig.high[i] - twig.low[i]);
                for (const Choice& choice : twig.choices) {
                    may_fall_[t][i] = may_fall_[t][i] || choice.sets[i];
                }
            }
        }
        for (double& s : scale_) s = s > 0 ? s : 1;
    }

    void look() {
        raise_slopes();
        slopes.least = compact_.settled_price;
        for (std::size_t i = 0; i < compact_.resources; ++i) {
            slopes.least += slopes.at_root[i] * compact_.at_root[i];
        }
        for (std::uint32_t t = 0; t < compact_.twigs.size(); ++t) {
            pick(t);
            slopes.least += slopes.own[t];
        }
    }

    /// Turns the direction by the gradient here; false when there is nowhere to go.
    bool turn() {
        double turned = 0;
        double before = 0;
        double now = 0;
        set_gradient();
        each([&](std::size_t t, std::size_t i) {
            turned += gradient_[t][i] * direction_[t][i];
            before += direction_[t][i] * direction_[t][i];
        });
        const double keep = turned < 0 ? -1.5 * turned / before : 0;
        each([&](std::size_t t, std::size_t i) {
            double& d = direction_[t][i];
            d = gradient_[t][i] + keep * d;
            now += d * d;
        });
        square_ = now;
        return now > 0;
    }

    void step(double gain) {
        const double length = gain / square_;
        each([&](std::size_t t, std::size_t i) {
            double& d = dearer_[t][i];
            d += length * direction_[t][i] / scale_[i];
            if (!may_fall_[t][i]) d = std::max(d, 0.0);
        });
    }

    void mark() { marked_ = dearer_; }

    /// To where it was marked, without a direction.
    void go_back() {
        dearer_ = marked_;
        direction_.assign(direction_.size(), Figures{});
        look();
    }

    Slopes slopes;

private:
    /// Each twig and resource of which the slope may change there.
    template <class F>
    void each(const F& f) {
        for (std::size_t t = 0; t < compact_.twigs.size(); ++t) {
            if (row_.plain[t]) continue;
            for (std::size_t i = 0; i < compact_.resources; ++i) {
                if (may_fall_[t][i] || compact_.twigs[t].limits[i]) f(t, i);
            }
        }
    }

    void raise_slopes() {
        slopes.leaving.assign(compact_.twigs.size(), Figures{});
        slopes.at_root = {};
        for (std::size_t t = compact_.twigs.size(); t-- > 0;) {
            const std::uint32_t parent = compact_.twigs[t].parent;
            Figures& to = parent == none ? slopes.at_root : slopes.leaving[parent];
            for (std::size_t i = 0; i < compact_.resources; ++i) {
                const double p = std::max(0.0, slopes.leaving[t][i] + dearer_[t][i]);
                dearer_[t][i] = p - slopes.leaving[t][i];
                slopes.arriving[t][i] = p;
                to[i] += p;
            }
        }
    }

    void pick(std::uint32_t t) {
        double least = no_limit;
        std::uint32_t at = row_.first[t];
        const Figures& leaving = slopes.leaving[t];
        const Figures& arriving = slopes.arriving[t];
        for (std::uint32_t c = row_.first[t]; c < row_.first[t + 1]; ++c) {
            double own = row_.price[c];
            for (std::size_t i = 0; i < row_.k; ++i) {
                own += leaving[i] * row_.amount[c * row_.k + i];
                if (row_.plain[t]) continue;
                const double slope = (row_.sets[c * row_.k + i] ? 0 : leaving[i]) - arriving[i];
                own +=
                    slope >= 0 ? slope * compact_.twigs[t].low[i] : slope * row_.up[c * row_.k + i];
            }
            if (own < least) {
                least = own;
                at = c;
            }
        }
        picks_[t] = at - row_.first[t];
        slopes.own[t] = least;
    }

    double reckoned_in(std::uint32_t t, std::size_t i) const {
        const Twig& twig = compact_.twigs[t];
        return least_share(twig, twig.choices[picks_[t]], i, slopes, t).in;
    }

    /// By how much what the picks send misses what the next pick was reckoned with, added up along
    /// the way; resources scaled.
    void set_gradient() {
        for (std::uint32_t t = 0; t < compact_.twigs.size(); ++t) {
            const std::uint32_t parent = compact_.twigs[t].parent;
            for (std::size_t i = 0; i < compact_.resources; ++i) {
                double sent = compact_.at_root[i];
                double before = 0;
                if (parent != none) {
                    const Choice& up = compact_.twigs[parent].choices[picks_[parent]];
                    sent = up.amount[i] + (up.sets[i] ? 0 : reckoned_in(parent, i));
                    before = missed_[parent][i];
                }
                missed_[t][i] = before + sent - reckoned_in(t, i);
                const double g = missed_[t][i] / scale_[i];
                const bool held = dearer_[t][i] <= 0 && !may_fall_[t][i] && g < 0;
                gradient_[t][i] = held ? 0 : g;
            }
        }
    }

    const Compact& compact_;
    Row row_;
    std::vector<Figures> dearer_;
    std::vector<Figures> marked_;
    std::vector<std::array<bool, most_resources>> may_fall_;
    std::vector<Figures> missed_ = std::vector<Figures>(compact_.twigs.size());
    std::vector<Figures> gradient_;
    std::vector<Figures> direction_;
    std::vector<std::uint32_t> picks_;
    Figures scale_{};
    double square_ = 0;
};

double dearest(const Compact& compact) {
    double sum = compact.settled_price;
    for (const Twig& twig : compact.twigs) {
        double most = 0;
        for (const Choice& choice : twig.choices) most = std::max(most, choice.price);
        sum += most;
    }
    return sum;
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

}  // namespace

double own_of(const Compact& compact, const Slopes& slopes, std::uint32_t twig,
              const Choice& choice) {
    double own = choice.price;
    for (std::size_t i = 0; i < compact.resources; ++i) {
        own += least_share(compact.twigs[twig], choice, i, slopes, twig).value;
    }
    return own;
}

void evaluate(const Compact& compact, Slopes& slopes) {
    add_up(compact, slopes);
    slopes.own.assign(compact.twigs.size(), no_limit);
    slopes.least = compact.settled_price;
    for (std::size_t i = 0; i < compact.resources; ++i) {
        slopes.least += slopes.at_root[i] * compact.at_root[i];
    }
    for (std::uint32_t t = 0; t < compact.twigs.size(); ++t) {
        for (const Choice& choice : compact.twigs[t].choices) {
            slopes.own[t] = std::min(slopes.own[t], own_of(compact, slopes, t, choice));
        }
        slopes.least += slopes.own[t];
    }
}

Trial tried(const Compact& compact, const Slopes& slopes) {
    Trial trial;
    trial.price = compact.settled_price;
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

Bounded bounded(const Compact& compact, int steps, double known) {
    Ascent ascent(compact);
    Bounded found;
    found.slopes.least = -no_limit;
    const double far = std::min(known, dearest(compact));
    double share = 1;
    int idle = 0;
    for (int n = 0; n < steps && share > shortest; ++n) {
        ascent.look();
        const bool better = ascent.slopes.least > found.slopes.least;
        if (better || n % try_every == 0) {
            Trial trial = tried(compact, ascent.slopes);
            if (trial.price < found.best.price) found.best = std::move(trial);
        }
        if (better) {
            found.slopes = ascent.slopes;
            ascent.mark();
            idle = 0;
        } else if (++idle >= idle_steps) {
            share /= 2;
            idle = 0;
            ascent.go_back();
        }
        const double gap = std::min(found.best.price, far) - ascent.slopes.least;
        if (!(gap > 1e-9 * far) || !ascent.turn()) break;
        ascent.step(share * gap);
    }
    return found;
}

}  // namespace toft::spread
