#include "field/bar.h"

#include <algorithm>
#include <cmath>

namespace toft::field {

namespace {

/// How many lengths apart bars count as far.
constexpr double far_lengths = 6;

constexpr int most_halvings = 4;
constexpr int gauss_points = 6;
constexpr double gauss_place[] = {-0.932469514203152, -0.661209386466265, -0.238619186083197,
                                  0.238619186083197,  0.661209386466265,  0.932469514203152};
constexpr double gauss_weight[] = {0.171324492379170, 0.360761573048139, 0.467913934572691,
                                   0.467913934572691, 0.360761573048139, 0.171324492379170};

double far_mean(const Bar& a, const Bar& b, const Vector& d, double square) {
    const double one = 1 / square;
    const double ua = dot(a.along, d);
    const double ub = dot(b.along, d);
    const double second =
        a.half * a.half * (3 * ua * ua * one - 1) + b.half * b.half * (3 * ub * ub * one - 1);
    return std::sqrt(one) * (1 + second * one / 6);
}

/// The mean over the bar of 1/distance to a point.
double point_mean(const Vector& point, const Bar& bar, double soft) {
    const Vector d = point - bar.middle;
    const double u = dot(d, bar.along);
    const double p = std::sqrt(std::max(dot(d, d) - u * u, 0.0) + soft);
    return (std::asinh((u + bar.half) / p) - std::asinh((u - bar.half) / p)) / (2 * bar.half);
}

double parallel_mean(const Bar& a, const Bar& b, const Vector& d, double soft) {
    const double u = dot(d, a.along);
    const double p2 = std::max(dot(d, d) - u * u, 0.0) + soft;
    const double p = std::sqrt(p2);
    const auto twice = [&](double x) { return x * std::asinh(x / p) - std::sqrt(x * x + p2); };
    const double sum = a.half + b.half;
    const double difference = a.half - b.half;
    return (twice(u + sum) - twice(u + difference) - twice(u - difference) + twice(u - sum)) /
           (4 * a.half * b.half);
}

double distance_to(const Bar& bar, const Vector& point) {
    const Vector d = point - bar.middle;
    const double u = std::clamp(dot(d, bar.along), -bar.half, bar.half);
    const Vector rest = d - u * bar.along;
    return std::sqrt(dot(rest, rest));
}

/// Gauss points on `a`, the exact integral over `b`. Parts of `a` that lie close to `b` are halved,
/// at most `halvings` times.
double crossed_mean(const Bar& a, const Bar& b, double soft, int halvings) {
    if (halvings > 0 && distance_to(b, a.middle) < 2 * a.half) {
        Bar one = a;
        one.half = a.half / 2;
        Bar other = one;
        one.middle = a.middle - one.half * a.along;
        other.middle = a.middle + one.half * a.along;
        return (crossed_mean(one, b, soft, halvings - 1) +
                crossed_mean(other, b, soft, halvings - 1)) /
               2;
    }
    double sum = 0;
    for (int i = 0; i < gauss_points; ++i) {
        const Vector point = a.middle + a.half * gauss_place[i] * a.along;
        sum += gauss_weight[i] * point_mean(point, b, soft);
    }
    return sum / 2;
}

/// The mean over the bar of 1/distance to a point, not nearer than its surface.
double seen_from(const Vector& point, const Bar& bar) {
    const Vector d = point - bar.middle;
    const double u = dot(d, bar.along);
    const double p2 = std::max(dot(d, d) - u * u, 0.0);
    return point_mean(point, bar, std::max(bar.radius * bar.radius - p2, 0.0));
}

double near_mean(const Bar& a, const Bar& b, const Vector& d, double soft) {
    if (std::fabs(dot(a.along, b.along)) > 1 - 1e-12) return parallel_mean(a, b, d, soft);
    return (crossed_mean(a, b, soft, most_halvings) + crossed_mean(b, a, soft, most_halvings)) / 2;
}

}  // namespace

bool is_far(const Bar& a, const Bar& b, double square) {
    const double length = 2 * std::max(a.half, b.half);
    return square > far_lengths * far_lengths * length * length && square > 0;
}

double softness(const Bar& a, const Bar& b) {
    if (a.half == 0 || b.half == 0) return 0;
    return (a.radius * a.radius + b.radius * b.radius) / 2;
}

double mean_inverse(const Bar& a, const Bar& b) {
    const Vector d = a.middle - b.middle;
    const double square = dot(d, d);
    const bool far = is_far(a, b, square);
    if (a.half == 0 || b.half == 0) {
        if (far) return far_mean(a, b, d, square);
        if (b.half > 0) return seen_from(a.middle, b);
        if (a.half > 0) return seen_from(b.middle, a);
        return 1 / std::sqrt(square);
    }
    const double soft = softness(a, b);
    return far ? far_mean(a, b, d, square + soft) : near_mean(a, b, d, soft);
}

}  // namespace toft::field
