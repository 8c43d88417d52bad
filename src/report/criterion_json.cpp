#include "report/criterion_json.h"

#include "report/rule_json.h"
#include "words/keys.h"

namespace glim {

namespace {

Json length_json(const std::optional<Length>& length)
{
    return length ? Json(in_mm(*length)) : Json();
}

Json points_json(const std::vector<LightPoint>& points)
{
    Json::Array all;
    for (const LightPoint& p : points)
        all.push_back(Json::Object{{"h_deg", in_degrees(p.toward.h)},
                                   {"v_deg", in_degrees(p.toward.v)},
                                   {"cd", in_candelas(p.least)}});
    return all;
}

struct Figures {
    Json::Object operator()(const LeastArea& c) const
    {
        return {{"mm2", in_mm2(c.area)},
                {"if_partly_hidden", c.proof_if_hidden ? "proof_due" : "met"}};
    }
    Json::Object operator()(const NoObstacle&) const { return {}; }
    Json::Object operator()(const MostHidden& c) const { return {{"share", c.share}}; }
    Json::Object operator()(const LeastIntensity& c) const
    {
        return {{"cd", in_candelas(c.least)}};
    }
    Json::Object operator()(const MostIntensity& c) const { return {{"cd", in_candelas(c.most)}}; }
    Json::Object operator()(const LightTable& c) const
    {
        Json::Array groups;
        for (const LightGroup& g : c.groups)
            groups.push_back(Json::Object{{"name", g.name},
                                          {"total_cd", in_candelas(g.total)},
                                          {"points", points_json(g.points)}});
        return {{"points", points_json(c.points)},
                {"groups", std::move(groups)},
                {"floor", c.floor},
                {"axis_cd", c.axis ? Json(in_candelas(*c.axis)) : Json()},
                {"multiplied_by", c.multiplied_by}};
    }
    Json::Object operator()(const HeightLimits& c) const
    {
        return {{"of", key_of(c.of)},
                {"at_least_mm", length_json(c.at_least)},
                {"at_most_mm", length_json(c.at_most)},
                {"unless_unavoidable_mm", length_json(c.unless_unavoidable)}};
    }
    Json::Object operator()(const ToOuterEdge& c) const
    {
        return {{"at_most_mm", in_mm(c.at_most)}};
    }
    Json::Object operator()(const BetweenInnerEdges& c) const
    {
        return {{"at_least_mm", in_mm(c.at_least)}};
    }
    Json::Object operator()(const GapToLamp& c) const
    {
        Json::Array steps;
        for (const GapStep& s : c.steps)
            steps.push_back(
                Json::Object{{"at_least_mm", in_mm(s.at_least)}, {"follows", s.follows}});
        return {{"to", functions_json(c.to)},
                {"from", key_of(c.from)},
                {"gives", c.is_category ? "category" : "multiplier"},
                {"steps", std::move(steps)}};
    }
    Json::Object operator()(const LevelAxis& c) const
    {
        return {{"within_deg", in_degrees(c.within)}};
    }
    Json::Object operator()(const OneLamp& c) const
    {
        return {{"share", c.share}, {"widest_gap_mm", in_mm(c.widest_gap)}};
    }
};

} // namespace

Json criterion_json(const Criterion& criterion)
{
    Json::Object json{{"kind", criterion_keys[criterion.index()]}};
    for (Json::Member& member : std::visit(Figures{}, criterion))
        json.push_back(std::move(member));
    return json;
}

} // namespace glim
