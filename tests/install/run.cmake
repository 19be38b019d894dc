# Arguments: lib_build, source, work, generator, compiler, config, Boost_DIR; see CMakeLists.txt.

cmake_minimum_required(VERSION 3.25)

# By hand: 0.064 m2 x 27^(2/3) = 0.064 m2 x 9 = 0.576 m2. 453.592 g / 474.371 g/mol = 0.9562 mol of
# aluminium; 113.398 g / 286.138 g/mol = 0.3963 mol of carbonate, twice that of hydroxide;
# 0.7926 / 0.9562 / 3 = 27.6 %.
set(expected "0.576 m2, basicity 27.6 %\n")

set(prefix "${work}/prefix")
file(REMOVE_RECURSE "${work}")
file(MAKE_DIRECTORY "${work}/single")

function(run)
  execute_process(COMMAND ${ARGN} RESULT_VARIABLE status OUTPUT_VARIABLE output
                  ERROR_VARIABLE output)
  if(NOT status EQUAL 0)
    list(JOIN ARGN " " command)
    message(FATAL_ERROR "${command}: ${status}\n${output}")
  endif()
endfunction()

set(with_config "")
if(NOT config STREQUAL "")
  set(with_config --config "${config}")
endif()
run("${CMAKE_COMMAND}" --install "${lib_build}" --prefix "${prefix}" ${with_config})

set(single "${prefix}/include/whittaw_single.hpp")
if(NOT EXISTS "${single}")
  message(FATAL_ERROR "not installed: ${single}")
endif()
file(COPY "${single}" DESTINATION "${work}/single")
# A header that still leans on the others would be found by its include line.
file(READ "${single}" text)
if(text MATCHES "#include <whittaw/")
  message(FATAL_ERROR "${single} still includes a header of the library")
endif()

# No other copy of the package, as one in the user's own prefix or registry.
run("${CMAKE_COMMAND}" -S "${source}" -B "${work}/build" -G "${generator}"
    "-DCMAKE_CXX_COMPILER=${compiler}" "-DCMAKE_PREFIX_PATH=${prefix}" "-DBoost_DIR=${Boost_DIR}"
    -DCMAKE_FIND_USE_PACKAGE_REGISTRY=OFF "-DSINGLE_HEADER_DIR=${work}/single"
    "-DCMAKE_CXX_FLAGS=-Wall -Wextra -Werror")
file(STRINGS "${work}/build/CMakeCache.txt" found REGEX "^whittaw_DIR:")
string(FIND "${found}" "=${prefix}/" at)
if(at EQUAL -1)
  message(FATAL_ERROR "another package was found than the one installed: ${found}")
endif()
run("${CMAKE_COMMAND}" --build "${work}/build" ${with_config})

foreach(program IN ITEMS consumer consumer_single)
  set(path "${work}/build/${program}")
  if(NOT EXISTS "${path}")
    set(path "${work}/build/${config}/${program}")
  endif()
  execute_process(COMMAND "${path}" RESULT_VARIABLE status OUTPUT_VARIABLE output)
  if(NOT status EQUAL 0 OR NOT output STREQUAL expected)
    message(FATAL_ERROR "${program} gave ${status}, '${output}'; expected '${expected}'")
  endif()
endforeach()
