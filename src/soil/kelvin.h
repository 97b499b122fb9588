#pragma once
// Kelvin's functions of order 0: ker x + i kei x = K0(x e^(i pi/4)), for x > 0. Relative error of
// the complex value below 1e-12 (Abramowitz and Stegun, 9.9 and 9.12).

namespace toft::soil {

struct Kelvin {
    double ker = 0;
    double kei = 0;
};

Kelvin kelvin(double x);

}  // namespace toft::soil
