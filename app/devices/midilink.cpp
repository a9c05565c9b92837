#include "app/devices/midilink.h"

#include "app/devices/midiharp.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace devices {

namespace {

constexpr std::chrono::seconds lookEvery{2};

std::vector<std::string>::const_iterator findDevice(std::vector<std::string> const& ports,
                                                    std::string const& wanted)
{
    return std::ranges::find_if(
        ports, [&wanted](std::string const& port) { return sameDevice(port, wanted); });
}

} // namespace

MidiLink::MidiLink(QObject* parent) : QObject(parent)
{
    connect(&m_keys, &MidiKeys::keyPressed, this, &MidiLink::keyPressed);
    connect(&m_keys, &MidiKeys::keyReleased, this, &MidiLink::keyReleased);
    m_timer.setInterval(lookEvery);
    connect(&m_timer, &QTimer::timeout, this, &MidiLink::look);
    m_timer.start();
}

void MidiLink::want(std::string in, std::string out)
{
    if (in != m_wantedIn) {
        m_keys.close();
        m_in.clear();
    }
    if (out != m_wantedOut) {
        std::string const gone = std::exchange(m_out, {});
        if (!gone.empty()) emit outputGone(gone);
    }
    m_wantedIn = std::move(in);
    m_wantedOut = std::move(out);
    look();
}

std::vector<std::string> MidiLink::outputs() const { return midiOutputs(); }

void MidiLink::look()
{
    lookAtInput();
    lookAtOutput();
}

void MidiLink::lookAtInput()
{
    if (m_wantedIn == none) return;
    auto const ports = m_keys.ports();
    if (!m_in.empty() && std::ranges::find(ports, m_in) == ports.end()) {
        m_keys.close();
        std::string const gone = std::exchange(m_in, {});
        emit inputGone(gone);
    }
    if (!m_in.empty() || ports.empty()) return;
    auto const found = m_wantedIn.empty() ? ports.begin() : findDevice(ports, m_wantedIn);
    if (found == ports.end() || !m_keys.open(*found)) return;
    m_in = *found;
    emit inputCame(m_in);
}

void MidiLink::lookAtOutput()
{
    if (m_wantedOut.empty()) return;
    auto const ports = midiOutputs();
    if (!m_out.empty() && std::ranges::find(ports, m_out) == ports.end()) {
        std::string const gone = std::exchange(m_out, {});
        emit outputGone(gone);
    }
    if (!m_out.empty()) return;
    auto const found = findDevice(ports, m_wantedOut);
    if (found == ports.end()) return;
    m_out = *found;
    emit outputCame(m_out);
}

} // namespace devices
