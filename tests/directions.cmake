# The direction of includes: app -> ui -> core, and within core each room uses only those above it.
# Run as a test: cmake -DPROJECT=<folder> -P directions.cmake
set(rooms base music tune harp pattern harmony arrange hands levers proposal learning perform notation sheet files)

set(broken "")

# forbid(<folder> <regular expression of what its includes must not begin with>)
function(forbid folder pattern)
  file(GLOB_RECURSE sources "${PROJECT}/${folder}/*.h" "${PROJECT}/${folder}/*.cpp")
  foreach(source IN LISTS sources)
    file(STRINGS "${source}" lines REGEX "^#include [<\"](${pattern})")
    foreach(line IN LISTS lines)
      message(STATUS "${source}: ${line}")
      set(broken "yes" PARENT_SCOPE)
    endforeach()
  endforeach()
endfunction()

forbid(core "Q[A-Za-z]|ui/|app/|fluidsynth|RtMidi|sndfile")
forbid(ui "app/|fluidsynth|RtMidi|sndfile")

set(below ${rooms})
foreach(room IN LISTS rooms)
  list(POP_FRONT below)
  if(below)
    list(JOIN below "/|core/" later)
    forbid("core/${room}" "core/${later}/")
  endif()
endforeach()

# Within a room: papers stand on the sheet.
file(GLOB sources "${PROJECT}/core/sheet/*.h" "${PROJECT}/core/sheet/*.cpp")
foreach(source IN LISTS sources)
  file(STRINGS "${source}" lines REGEX "^#include \"core/sheet/papers/")
  if(lines)
    message(STATUS "${source}: ${lines}")
    set(broken "yes")
  endif()
endforeach()

if(broken)
  message(FATAL_ERROR "An include points the wrong way; see the map of rooms in DEVELOPERS.md")
endif()
