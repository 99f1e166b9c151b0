# SPDX-License-Identifier: MIT
# Makes the sample twice. The two must be the same to the byte; the committed one must hold the same, row for
# row (not byte for byte: the database library's version stands in the file).
function(run)
  execute_process(COMMAND ${ARGN} RESULT_VARIABLE result)
  if(NOT result EQUAL 0)
    message(FATAL_ERROR "did not work or found a difference: ${ARGN}")
  endif()
endfunction()

# Two folders and one name: a book's stored map names the book's file.
foreach(turn first second)
  file(MAKE_DIRECTORY ${SCRATCH}/${turn})
  run(${MAKER} ${SCRATCH}/${turn}/larkfold.gpkg ${SCRATCH}/${turn}.csv)
endforeach()
run(${CMAKE_COMMAND} -E compare_files ${SCRATCH}/first/larkfold.gpkg ${SCRATCH}/second/larkfold.gpkg)
run(${CMAKE_COMMAND} -E compare_files ${SCRATCH}/first.csv ${SAMPLE}/weather-2026-update.csv)
run(${COMPARER} ${SAMPLE}/larkfold.gpkg ${SCRATCH}/first/larkfold.gpkg)
