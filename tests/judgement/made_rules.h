#pragma once

#include "model/study.h"

namespace glim::shapes {

/// A row of a table invented for a test: asks any lamp, answered by one alone.
RuleRow made_row(const std::string& id, Criterion criterion);
/// The same with a field of directions, degrees.
RuleRow made_row(const std::string& id, Criterion criterion, double h0, double h1, double v0,
                 double v1);
FieldRectangle rectangle(double h0, double h1, double v0, double v1);

/// Asks the study's first lamp for `rule` of a table made of these rows and rules.
Study asking(Study study, const std::string& rule, std::vector<RuleRow> rows,
             std::vector<Rule> rules = {});

/// A further lamp on the left that sends light from `lit`; drawn once, not paired.
LampId add_lamp(Study& study, const std::string& name, LampFunction function, TriangleMesh lit);

} // namespace glim::shapes
