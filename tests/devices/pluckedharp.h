#pragma once

#include "tests/devices/dummyserver.h"

#include <RtMidi.h>

#include <memory>
#include <string>
#include <vector>

// The instrument of whoever plays: plucks strings into the dummy server.
class MidiHarp {
public:
    explicit MidiHarp(DummyServer const& server)
    {
        server.waitFor([&] {
            try {
                m_out = std::make_unique<RtMidiOut>(RtMidi::UNIX_JACK, "lapharp");
                m_out->setErrorCallback([](RtMidiError::Type, std::string const&, void*) {});
                m_out->openVirtualPort("harp");
                return true;
            } catch (RtMidiError const&) {
                m_out.reset();
                return false;
            }
        });
    }
    bool isThere() const { return m_out != nullptr; }
    void pluck(int midi)
    {
        std::vector<unsigned char> const on{0x90, static_cast<unsigned char>(midi), 80};
        std::vector<unsigned char> const off{0x80, static_cast<unsigned char>(midi), 0};
        m_out->sendMessage(&on);
        m_out->sendMessage(&off);
    }

private:
    std::unique_ptr<RtMidiOut> m_out;
};
