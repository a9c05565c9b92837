#include "core/files/musicxml/scorehead.h"

#include "core/files/musicxml/xmltext.h"

#include <string>

namespace files::musicxml {

namespace {

using pugi::xml_node;
using xml::addNumber;
using xml::addText;

constexpr int harpProgram = 47; // General MIDI 1: Orchestral Harp, counted from 1

void addField(xml_node miscellaneous, char const* name, std::string const& text)
{
    if (text.empty()) return;
    xml_node field = miscellaneous.append_child("miscellaneous-field");
    field.append_attribute("name") = name;
    field.text() = text.c_str();
}

void addCreator(xml_node identification, char const* type, std::string const& name)
{
    if (name.empty()) return;
    xml_node creator = identification.append_child("creator");
    creator.append_attribute("type") = type;
    creator.text() = name.c_str();
}

void writeIdentification(xml_node score, tune::Tune const& tune)
{
    xml_node identification = score.append_child("identification");
    addCreator(identification, "composer", tune.composer);
    addCreator(identification, "arranger", tune.arranger);
    if (!tune.copyright.empty()) addText(identification, "rights", tune.copyright);
    addText(identification.append_child("encoding"), "software", "Sallow");
    if (!tune.source.empty()) addText(identification, "source", tune.source);
    xml_node fields = identification.append_child("miscellaneous");
    for (std::string const& title : tune.otherTitles) addField(fields, "other-title", title);
    addField(fields, "origin", tune.origin);
    addField(fields, "rhythm", tune.rhythm);
    for (std::string const& note : tune.notes) addField(fields, "note", note);
    for (std::string const& line : tune.words) addField(fields, "words", line);
    std::string order;
    for (std::string const& part : tune.partOrder) order += (order.empty() ? "" : " ") + part;
    addField(fields, "order-of-parts", order);
    if (!fields.first_child()) identification.remove_child(fields);
}

void writePartList(xml_node score)
{
    xml_node part = score.append_child("part-list").append_child("score-part");
    part.append_attribute("id") = "P1";
    addText(part, "part-name", "Harp");
    xml_node instrument = part.append_child("score-instrument");
    instrument.append_attribute("id") = "P1-I1";
    addText(instrument, "instrument-name", "Harp");
    addText(instrument, "instrument-sound", "pluck.harp");
    xml_node sound = part.append_child("midi-instrument");
    sound.append_attribute("id") = "P1-I1";
    addNumber(sound, "midi-channel", 1);
    addNumber(sound, "midi-program", harpProgram);
}

} // namespace

void writeHead(xml_node score, tune::Tune const& tune)
{
    if (!tune.title.empty()) addText(score.append_child("work"), "work-title", tune.title);
    writeIdentification(score, tune);
    writePartList(score);
}

} // namespace files::musicxml
