#include "spread/frontier.h"

#include "base/limit.h"
#include "spread/check.h"
#include "spread/solve.h"

#include <algorithm>
#include <set>

namespace toft::spread {

namespace {

Faults faults_in(const FrontierAsk& ask) {
    Faults faults;
    if (!(ask.headroom_step > 0)) {
        faults.push_back({"out-of-range", "/headroom_step", "A step must be above 0.", "", {}});
    }
    if (!(ask.price_step >= 0)) {
        faults.push_back({"out-of-range", "/price_step", "It must be at least 0.", "", {}});
    }
    if (!(ask.lowest <= ask.highest && ask.highest - ask.lowest < no_limit)) {
        faults.push_back(
            {"out-of-range", "/highest", "Must be finite and no less than the lowest.", "", {}});
    }
    return faults;
}

std::set<int> grades_of(const Problem& problem) {
    std::set<int> grades;
    for (const Branch& branch : problem.branches) {
        for (const Option& option : branch.options) grades.insert(option.grade);
    }
    return grades;
}

/// The problem without options below the floors, and where in the lists the others stood.
struct Floored {
    Problem problem;
    std::vector<std::vector<std::size_t>> places;
    bool empty = false;  ///< some branch has nothing left
};

Floored floored(Problem problem, double headroom, int grade) {
    Floored out;
    for (Branch& branch : problem.branches) {
        std::vector<Option> kept;
        std::vector<std::size_t> places;
        for (std::size_t o = 0; o < branch.options.size(); ++o) {
            const Option& option = branch.options[o];
            if (option.grade < grade || !within(headroom, option.headroom)) continue;
            kept.push_back(option);
            places.push_back(o);
        }
        out.empty = out.empty || kept.empty();
        branch.options = std::move(kept);
        out.places.push_back(std::move(places));
    }
    out.problem = std::move(problem);
    return out;
}

class Asking {
public:
    Asking(const FrontierAsk& ask, const Patience& patience) : ask_(ask), patience_(patience) {}

    void grade(int grade) {
        const Point low = point(ask_.lowest, grade);
        if (low.chosen.empty()) return;
        between(low, point(ask_.highest, grade));
    }

    Frontier frontier() && {
        auto& points = found_.points;
        std::sort(points.begin(), points.end(), [](const Point& a, const Point& b) {
            if (a.price != b.price) return a.price < b.price;
            return a.headroom != b.headroom ? a.headroom > b.headroom : a.grade > b.grade;
        });
        std::vector<Point> kept;
        for (Point& p : points) {
            const bool beaten = std::any_of(kept.begin(), kept.end(), [&](const Point& k) {
                return k.headroom >= p.headroom && k.grade >= p.grade;
            });
            if (!beaten) kept.push_back(std::move(p));
        }
        points = std::move(kept);
        return std::move(found_);
    }

    Faults faults;

private:
    /// An answer without a choice stands for one of endless price.
    Point point(double headroom, int grade) {
        Point point{{}, no_limit, no_limit, headroom, grade};
        if (!faults.empty()) return point;
        Floored at = floored(ask_.problem_at(headroom), headroom, grade);
        if (at.empty) return point;
        ++found_.solved;
        Patience left = patience_;
        left.most_offers -= std::min(left.most_offers, offers_);
        Outcome<Answer> answer = solve(at.problem, left);
        if (!answer) {
            faults = answer.error();
            return point;
        }
        offers_ += answer->offers;
        found_.proved = found_.proved && answer->standing != Standing::stopped;
        for (std::size_t b = 0; b < answer->chosen.size(); ++b) {
            point.chosen.push_back(at.places[b][answer->chosen[b]]);
        }
        point.price = answer->price;
        point.at_least = answer->at_least;
        if (!point.chosen.empty()) found_.points.push_back(point);
        return point;
    }

    /// Asks between two floors until the higher one costs little more, or they are close.
    void between(const Point& low, const Point& high) {
        if (low.chosen.empty() || !faults.empty() || !found_.proved) return;
        if (within(high.headroom - low.headroom, ask_.headroom_step)) return;
        if (!high.chosen.empty() && within(high.price - low.price, ask_.price_step)) return;
        const double floor = low.headroom + (high.headroom - low.headroom) / 2;
        const Point middle = point(floor, low.grade);
        between(low, middle);
        between(middle, high);
    }

    const FrontierAsk& ask_;
    const Patience& patience_;
    Frontier found_;
    std::uint64_t offers_ = 0;
};

}  // namespace

Outcome<Frontier> frontier(const FrontierAsk& ask, const Patience& patience) {
    Faults faults = faults_in(ask);
    if (!faults.empty()) return failed(std::move(faults));
    Asking asking(ask, patience);
    const Problem lowest = ask.problem_at(ask.lowest);
    faults = faults_of(lowest);
    if (!faults.empty()) return failed(std::move(faults));
    for (const int grade : grades_of(lowest)) asking.grade(grade);
    if (!asking.faults.empty()) return failed(asking.faults);
    return std::move(asking).frontier();
}

}  // namespace toft::spread
