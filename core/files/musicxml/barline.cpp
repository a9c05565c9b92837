#include "core/files/musicxml/measure.h"

#include "core/files/abc/text.h"
#include "core/files/musicxml/values.h"

#include <algorithm>

namespace files::musicxml {

using pugi::xml_node;
using tune::BarLine;

namespace {

std::vector<int> endingsFrom(std::string_view text)
{
    constexpr int last = 99;
    std::vector<int> endings;
    int number = 0;
    for (char c : std::string(text.substr(0, longestWords)) + ' ') {
        if (c >= '0' && c <= '9') {
            number = std::min(number * 10 + (c - '0'), last + 1);
        } else {
            if (number >= 1 && number <= last) endings.push_back(number);
            number = 0;
        }
    }
    std::sort(endings.begin(), endings.end());
    endings.erase(std::unique(endings.begin(), endings.end()), endings.end());
    return endings;
}

} // namespace

void MeasureReader::barline(xml_node node)
{
    std::string_view const location = node.attribute("location").as_string("right");
    xml_node const repeat = node.child("repeat");
    xml_node const ending = node.child("ending");
    std::string_view const direction = repeat.attribute("direction").value();
    std::string_view const type = ending.attribute("type").value();
    if (location == "middle") {
        if (repeat || ending)
            m_remarks.add(m_places.of(node), base::said("a repeat inside a bar"), base::said("left out"));
        return;
    }
    if (type == "start") {
        m_bar.endings = endingsFrom(ending.attribute("number").value());
        if (m_bar.endings.empty()) m_bar.endings = endingsFrom(ending.text().get());
        if (m_bar.endings.empty())
            m_remarks.add(m_places.of(node), base::said("a time bar has no number"), base::said("left out"));
    }
    if (direction == "forward") {
        if (location == "left")
            m_bar.repeatOpens = true;
        else
            m_opensNext = true;
    }
    if (location == "left") {
        if (direction == "backward" && !bars.empty()) bars.back().repeatCloses = true;
        return;
    }
    if (type == "stop" || type == "discontinue") m_bar.endingCloses = true;
    if (direction == "backward") {
        constexpr int mostTimes = 50;
        m_bar.repeatCloses = true;
        m_bar.timesPlayed = std::clamp(repeat.attribute("times").as_int(2), 2, mostTimes);
    }
    std::string_view const style = trimmed(node.child("bar-style").text().get());
    if (repeat) return;
    if (style == "light-light" || style == "heavy" || style == "heavy-light" ||
        style == "heavy-heavy")
        m_bar.closes = BarLine::Double;
    if (style == "light-heavy") m_bar.closes = BarLine::Final;
    if (style == "none") m_bar.closes = BarLine::None;
}

} // namespace files::musicxml
