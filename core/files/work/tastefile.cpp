#include "core/files/work/tastefile.h"

#include "core/base/words.h"
#include "core/files/json.h"
#include "core/files/jsonwords.h"
#include "core/files/work/form.h"

#include <cmath>

namespace files {

namespace {

using base::Fault;
using base::FaultCode;

constexpr int tasteVersion = 1;

Json offerMember(learning::Offer const& offer)
{
    Json judged = Json::object();
    for (std::size_t t = 0; t < offer.judged.size(); ++t)
        if (offer.judged[t] != 0)
            judged[std::string(arrange::termName(static_cast<arrange::Term>(t)))] =
                std::round(offer.judged[t] * 1000) / 1000;
    return {{"shape", offer.shape}, {"judged", std::move(judged)}};
}

// The term's name in the file; how the shape fits was called "liking" in older ones.
std::string nameIn(Json const& judged, arrange::Term term)
{
    std::string name(arrange::termName(term));
    bool const older = term == arrange::Term::ShapeFit && !judged.contains(name);
    return older ? "liking" : name;
}

learning::Offer offerFrom(Json const& member)
{
    learning::Offer offer{member.at("shape").get<std::string>(), {}};
    Json const& judged = member.at("judged");
    for (std::size_t t = 0; t < offer.judged.size(); ++t) {
        constexpr double most = 1000; // points; what is more is no judgement
        double const points = judged.value(nameIn(judged, static_cast<arrange::Term>(t)), 0.0);
        offer.judged[t] = std::isfinite(points) ? std::clamp(points, -most, most) : 0;
    }
    return offer;
}

learning::Choice choiceFrom(Json const& member)
{
    learning::Choice choice;
    choice.manner = member.at("manner").get<std::string>();
    choice.level = member.at("level").get<int>();
    choice.kind = member.at("kind").get<std::string>();
    choice.place = member.at("place").get<std::string>();
    choice.taken = member.at("taken").get<std::size_t>();
    choice.proposed = member.at("proposed").get<std::size_t>();
    for (Json const& offer : member.at("offers")) {
        if (choice.offers.size() == learning::offersKept) break;
        choice.offers.push_back(offerFrom(offer));
    }
    return choice;
}

} // namespace

std::string tasteText(TasteKept const& kept)
{
    Json choices = Json::array();
    for (learning::Choice const& choice : kept.choices) {
        Json offers = Json::array();
        for (learning::Offer const& offer : choice.offers) offers.push_back(offerMember(offer));
        choices.push_back({{"manner", choice.manner},
                           {"level", choice.level},
                           {"kind", choice.kind},
                           {"place", choice.place},
                           {"taken", choice.taken},
                           {"proposed", choice.proposed},
                           {"offers", std::move(offers)}});
    }
    Json const json{
        {"sallow_taste", tasteVersion}, {"on", kept.on}, {"choices", std::move(choices)}};
    return json.dump(-1, ' ', false, Json::error_handler_t::replace) + '\n';
}

base::Result<TasteKept> readTaste(std::string_view text, std::string const& file)
{
    try {
        Json const json = Json::parse(text);
        if (json.at("sallow_taste").get<int>() > tasteVersion) return newerForm(file);
        TasteKept kept;
        kept.on = json.at("on").get<bool>();
        for (Json const& member : json.at("choices")) {
            learning::Choice choice = choiceFrom(member);
            bool const whole =
                choice.taken < choice.offers.size() && choice.proposed < choice.offers.size();
            if (!whole)
                return Fault{FaultCode::Malformed, file,
                             base::said("a choice names a shape that was not offered")};
            kept.choices.push_back(std::move(choice));
        }
        return kept;
    } catch (Json::exception const& error) {
        return Fault{FaultCode::Malformed, file, jsonWords(error.id, error.what())};
    }
}

} // namespace files
