#pragma once
// Points that fill a cube evenly without chance: the sequence of van der Corput in each direction,
// to a prime base of its own. J. G. van der Corput 1935; J. H. Halton 1960. Page:
// docs/methods/tolerance.md.

#include <array>
#include <cstddef>
#include <vector>

namespace toft::tolerance {

/// Bases there are, one for each direction.
inline constexpr std::array<int, 16> primes{2,  3,  5,  7,  11, 13, 17, 19,
                                            23, 29, 31, 37, 41, 43, 47, 53};

/// `n` written in base `base` (at least 2) and mirrored at the point: 1, 2, 3, 4 in base 2 are 0.5,
/// 0.25, 0.75, 0.125. From 0 up to but not 1.
double mirrored(std::size_t n, int base);

/// The points of 1, 2, 3 … one after the other, each direction shifted round the unit length.
class Halton {
public:
    /// At most primes.size() directions. Shift number 0 is none; others are as good as strangers to
    /// each other, which lets the scatter between them tell an error.
    explicit Halton(std::size_t directions, std::size_t shift = 0);

    /// The next point, 0 up to but not 1 in each direction.
    const std::vector<double>& next();

private:
    struct Direction {
        int base = 2;
        double shift = 0;
        double value = 0;
        std::vector<int> digits;
    };
    static void step(Direction& direction);

    std::vector<Direction> directions_;
    std::vector<double> point_;
};

}  // namespace toft::tolerance
