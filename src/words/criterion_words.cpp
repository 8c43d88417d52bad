#include "words/criterion_words.h"

#include "model/nearest_word.h"
#include "words/keys.h"
#include "words/numbers.h"

namespace glim {

namespace {

std::string mm_words(Length length) { return rounded(in_mm(length), 3) + " mm"; }

std::string percent_words(double share) { return rounded(share * 100, 2) + " %"; }

std::string limits_words(const std::optional<Length>& at_least,
                         const std::optional<Length>& at_most)
{
    std::string words;
    if (at_least)
        words += "at least " + mm_words(*at_least);
    if (at_least && at_most)
        words += " and ";
    if (at_most)
        words += "at most " + mm_words(*at_most);
    return words;
}

struct Words {
    std::string operator()(const LeastArea& c) const
    {
        return "at least " + area_words(c.area) + " in view in every direction" +
               (c.proof_if_hidden ? "; photometric proof due where part of the lamp is hidden"
                                  : "");
    }
    std::string operator()(const NoObstacle&) const
    {
        return "in every direction the lamp shows some surface and nothing hides any part of it; "
               "where something does, photometric proof is due";
    }
    std::string operator()(const MostHidden& c) const
    {
        return "in every direction at most " + percent_words(c.share) +
               " of the apparent surface hidden";
    }
    std::string operator()(const LeastIntensity& c) const
    {
        return "at least " + rounded(in_candelas(c.least), 3) +
               " cd in every direction, by the lamp's photometric file";
    }
    std::string operator()(const MostIntensity& c) const
    {
        return "at most " + rounded(in_candelas(c.most), 3) +
               " cd in every direction, by the lamp's photometric file";
    }
    std::string operator()(const LightTable& c) const
    {
        std::string words = "its light in " + counted(directions_of(c).size(), "point");
        if (c.axis)
            words += ", " + rounded(in_candelas(*c.axis), 3) + " cd on the axis";
        if (!c.groups.empty())
            words += " of " + counted(c.groups.size(), "group") + ", no point below " +
                     percent_words(c.floor) + " of its own";
        if (!c.multiplied_by.empty())
            words += ", multiplied by what `" + c.multiplied_by + "` gives";
        return words + ", by the lamp's photometric file";
    }
    std::string operator()(const HeightLimits& c) const
    {
        std::string words = std::string(words_of(c.of)) + " " +
                            limits_words(c.at_least, c.at_most) + " above the ground";
        if (c.unless_unavoidable)
            words += " (at most " + mm_words(*c.unless_unavoidable) +
                     " where the bodywork leaves no other place)";
        return words;
    }
    std::string operator()(const ToOuterEdge& c) const
    {
        return "outermost point of the apparent surface at most " + mm_words(c.at_most) +
               " from the extreme outer edge";
    }
    std::string operator()(const BetweenInnerEdges& c) const
    {
        return "inner edges of the two lamps at least " + mm_words(c.at_least) + " apart";
    }
    std::string operator()(const GapToLamp& c) const
    {
        std::string steps;
        for (const GapStep& s : c.steps)
            steps +=
                (steps.empty() ? "" : ", ") + s.follows + " from " + mm_words(s.at_least) + " on";
        return "gap " + std::string(words_of(c.from)) + " to " + functions_words(c.to) + ": " +
               (c.is_category ? "category " : "multiplier of the photometric minima ") + steps;
    }
    std::string operator()(const LevelAxis& c) const
    {
        return "reference axis parallel to the ground within " + angle_words(c.within);
    }
    std::string operator()(const OneLamp& c) const
    {
        return "lit parts fill " + percent_words(c.share) +
               " of the smallest quadrilateral around them, or are no more than " +
               mm_words(c.widest_gap) + " apart";
    }
};

std::string condition_words(const Condition& c)
{
    std::string words(words_of(c.quantity));
    if (c.at_least)
        words += " at least " + mm_words(*c.at_least);
    if (c.at_least && c.below)
        words += " and";
    if (c.below)
        words += " below " + mm_words(*c.below);
    std::string listed_words;
    for (const std::string& word : c.one_of)
        listed_words += (listed_words.empty() ? " " : " or ") + word;
    for (const std::string& word : c.none_of)
        listed_words += (listed_words.empty() ? " neither " : " nor ") + word;
    return words + listed_words;
}

} // namespace

std::string criterion_words(const Criterion& criterion) { return std::visit(Words{}, criterion); }

std::string conditions_words(const std::vector<Condition>& conditions)
{
    std::string words;
    for (const Condition& c : conditions)
        words += (words.empty() ? "" : ", ") + condition_words(c);
    return words;
}

std::string functions_words(const std::vector<LampFunction>& functions)
{
    std::string words;
    for (const LampFunction f : functions)
        words += (words.empty() ? "" : ", ") + std::string(words_of(f));
    return words.empty() ? "every function" : words;
}

} // namespace glim
