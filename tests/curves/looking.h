#pragma once
// Example jobs to draw curves of, and devices made for a test.

#include "curves/log_paper.h"
#include "picture/looking.h"

namespace toft::curves {

inline LogPaper plain_paper() { return {{100, 200, 900, 800}}; }

/// A breaker of 20 A: operates at 100 A within 0.1 s (from 5 s on), holds 22.6 A for an hour and
/// 60 A for 0.1 s, breaks 6 kA.
inline tables::Device breaker() {
    tables::Device device;
    device.standard = "BS EN 60898";
    device.curve = "B";
    device.rating = amperes(20);
    device.breaking.value = amperes(6000);
    device.points = {{seconds(5), {amperes(100), nullptr}},
                     {seconds(0.1), {amperes(100), nullptr}}};
    device.holds = {{seconds(3600), {amperes(22.6), nullptr}},
                    {seconds(0.1), {amperes(60), nullptr}}};
    return device;
}

/// Level words only: those along slanting lines have a test of their own.
inline drawing::Items level(const drawing::Items& items) {
    drawing::Items out;
    for (const drawing::Text& text : picture::texts_in(items)) {
        if (text.style.turn == 0) out.emplace_back(text);
    }
    return out;
}

}  // namespace toft::curves
