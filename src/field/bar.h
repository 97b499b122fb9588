#pragma once
// The mean of 1/distance between two straight thin bars: the geometry that all fields of wires are
// made of. Plain numbers in metres.

namespace toft::field {

struct Vector {
    double x = 0;
    double y = 0;
    double z = 0;  ///< downwards

    friend Vector operator+(const Vector& a, const Vector& b) {
        return {a.x + b.x, a.y + b.y, a.z + b.z};
    }
    friend Vector operator-(const Vector& a, const Vector& b) {
        return {a.x - b.x, a.y - b.y, a.z - b.z};
    }
    friend Vector operator*(double f, const Vector& a) { return {f * a.x, f * a.y, f * a.z}; }
};

inline double dot(const Vector& a, const Vector& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }

/// A thin bar of metal. A point is a bar of no length.
struct Bar {
    Vector middle;
    Vector along;     ///< of length 1
    double half = 0;  ///< half its length
    double radius = 0;
};

/// The mean over both bars of 1/distance, where the square of the distance between two bars is
/// taken between their axes and half the square of either radius is added. That keeps the sums
/// positive however bars meet (a table of these means has only positive eigenvalues) and is right
/// for a bar on itself; for others it errs by (radius/distance)^2/2. From a point the distance is
/// that to the axis, or the radius inside the metal.
///
/// Parallel bars and points: exact. Bars farther apart than
/// six lengths: a series to the second order, within 1e-4 of the value. Others: one integral exact,
/// the other by six Gauss points on parts the finer the nearer, both ways round; within 1e-3 where
/// bars meet at a corner, far better elsewhere. Equal to the last digits when the bars change
/// places.
double mean_inverse(const Bar& a, const Bar& b);

/// Whether bars with the square of this distance between their middles get the series above.
bool is_far(const Bar& a, const Bar& b, double square);
/// What mean_inverse() adds to the square of the distance; nothing where a point is one of them.
double softness(const Bar& a, const Bar& b);

}  // namespace toft::field
