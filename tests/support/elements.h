#pragma once
// Electrodes that are the same all round a vertical axis, in any layers of soil, solved by finite
// elements (gmsh meshes, getdp solves): a second opinion on fields that shares no code, no images
// and no thin wires with the program. Second-order triangles; the ground ends at a sphere where the
// potential falls like 1/distance.

#include <string>
#include <utility>
#include <vector>

namespace toft::support {

class TurnedField {
public:
    /// Resistivities in ohm metres, thickness of the upper layer in metres.
    TurnedField(double upper, double lower, double thickness);
    /// Resistivity and thickness of each layer from the surface down, over the deepest.
    TurnedField(std::vector<std::pair<double, double>> layers, double deepest);

    /// Electrodes on the axis or around it, numbered from 0 in the order they are added. Metres.
    void rod(double length, double radius);  ///< upright on the axis, its top at the surface
    void ring(double diameter, double radius, double depth);  ///< of round wire
    void half_ball(double radius);                            ///< the lower half of a ball

    struct Answer {
        std::vector<double> rises;      ///< volts on each electrode
        std::vector<double> potential;  ///< volts at the places asked for
    };
    /// One ampere into electrode `fed`; potentials at (distance from the axis, depth). Throws when
    /// gmsh or getdp cannot be run or leaves an answer out.
    Answer solve(int fed, const std::vector<std::pair<double, double>>& places = {}) const;

private:
    struct Electrode {
        std::string shape;  ///< the tool that is taken out of the ground, with number %d
        double left, bottom, right, top;
        double finest;
    };

    std::string geometry() const;
    /// Cuts surface `soil` at the boundaries and names the layers.
    std::string strata_geometry(int soil) const;
    std::string problem(int fed, const std::vector<std::pair<double, double>>& places) const;

    std::vector<std::pair<double, double>> layers_;
    double deepest_;
    std::vector<Electrode> electrodes_;
};

}  // namespace toft::support
