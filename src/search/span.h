#pragma once
// Between what open facts may make of a scheme's price. Lengths move the prices of all schemes in
// step, so they are told apart; metal to bond, final circuits and what must be put right first may
// each cost anything from their kindest to their worst.

#include "price/price.h"

namespace toft::search {

/// Price with tax, pounds: with lengths at the worse end of open facts and at the better, each with
/// all else at its kindest and at its worst.
struct Span {
    double far_low = 0, far_high = 0;
    double near_low = 0, near_high = 0;

    /// Dearer than `other` whatever the facts turn out to be.
    bool surely_above(const Span& other) const;
};

Span operator+(const Span& a, const Span& b);

/// Every line of a price is rounded to the penny, so that a price does not move quite in step with
/// the lengths: by at most this, pounds with tax.
double out_of_step(const price::Book& book, const study::Setting<Silent>& setting);

/// Wider by so much at every end.
Span widened(const Span& span, double by);

/// Whether both settings price every scheme of that earthing alike, but for what is to be put right
/// first: the same lengths, metal to bond and feed of the final circuits.
bool priced_alike(const study::Setting<Silent>& a, const study::Setting<Silent>& b,
                  study::BuildingEarthing earthing);

/// Span of a route without its house end: from its price at the worse end of open facts, with what
/// must be put right there, and that at the better end.
Span route_span(const price::Book& book, const price::Price<Silent>& worse,
                const price::Price<Silent>& better);

/// Span of a house end with what must be put right for it.
Span head_span(const price::Book& book, const price::Price<Silent>& worse);

}  // namespace toft::search
