@echo off
rem Starts Swathbook from its own folder: finds a Java, builds the program on first use, makes the
rem class-data archive that halves the start-up time, and hands over to Java. Blocks in parentheses
rem are kept free of paths, for a path may hold parentheses itself.
setlocal EnableExtensions DisableDelayedExpansion

set "SB_HOME=%~dp0"
set "SB_TARGET=%SB_HOME%target"
rem In what is unpacked from the zip this stands in a folder bin, built, the program one above.
set "SB_UNPACKED="
for %%D in ("%SB_HOME%.") do if /i "%%~nxD"=="bin" if not exist "%SB_HOME%pom.xml" set "SB_UNPACKED=1"
if not defined SB_UNPACKED goto placed
for %%D in ("%SB_HOME%..") do set "SB_TARGET=%%~fD"
:placed
set "SB_JAR=%SB_TARGET%\swathbook.jar"
set "SB_LIB=%SB_TARGET%\lib"
set "SB_LOG=%SB_TARGET%\build.log"
set "SB_LOCK=%SB_TARGET%\building"
set "SB_KEEP=%SB_TARGET%\swathbook"

rem --- the first Java 17 or later of JAVA_HOME and the PATH
set "SB_SEEN="
set "SB_JAVA="
if not defined JAVA_HOME goto try_path
set "SB_JAVA=%JAVA_HOME:"=%\bin\java.exe"
call :read_version
if %SB_MAJOR% GEQ 17 goto java_found
set "SB_SEEN=; JAVA_HOME holds %SB_VERSION%"
:try_path
set "SB_JAVA="
for %%J in (java.exe) do set "SB_JAVA=%%~$PATH:J"
if not defined SB_JAVA goto no_java
call :read_version
if %SB_MAJOR% GEQ 17 goto java_found
set "SB_SEEN=%SB_SEEN%; the PATH holds %SB_VERSION%"
:no_java
>&2 echo swathbook: it needs Java 17 or later, by JAVA_HOME or on the PATH%SB_SEEN%
exit /b 2

:java_found
for %%J in ("%SB_JAVA%") do set "SB_BIN=%%~dpJ"
for %%J in ("%SB_BIN%..") do set "SB_JAVA_HOME=%%~fJ"
if not defined SB_UNPACKED goto look
if not exist "%SB_JAR%" goto not_whole
if exist "%SB_LIB%\" goto archive
:not_whole
>&2 echo swathbook: "%SB_TARGET%" lacks swathbook.jar or its folder lib; unpack it again, whole
exit /b 2
:look
if not exist "%SB_JAR%" goto build
if not exist "%SB_LIB%\" goto build
if exist "%SB_LOCK%\" goto build

rem --- what git fetched since the program was built is not in it. Only where git has moved since is any
rem source looked at, so that a start is as quick as ever; what is edited by hand is the editor's own.
rem Of two files xcopy counts the first where it is newer than the second. Times of many are compared
rem by PowerShell, which takes the paths from the environment; one that does not start warns of nothing.
set "SB_MOVED=%SB_HOME%..\.git\logs\HEAD"
if not exist "%SB_MOVED%" goto archive
xcopy /d /l /y "%SB_MOVED%" "%SB_JAR%" 2>nul <nul | findstr /b "1 " >nul
if errorlevel 1 goto archive
powershell -NoProfile -NonInteractive -Command "$jars = @(Get-Item -LiteralPath $env:SB_JAR) + @(Get-ChildItem -LiteralPath $env:SB_LIB -Filter *.jar); $built = ($jars | Sort-Object LastWriteTimeUtc | Select-Object -Last 1).LastWriteTimeUtc; foreach ($module in 'catalog', 'planner-core', 'cli') { $newer = Get-ChildItem -LiteralPath ($env:SB_HOME + '..\' + $module + '\src\main') -Recurse | Where-Object { $_.LastWriteTimeUtc -gt $built }; if ($newer) { exit 7 } }" >nul 2>&1 <nul
if not "%errorlevel%"=="7" goto archive
>&2 echo swathbook: it is older than its sources; build it anew, with: mvn package -Dmaven.test.skip=true
goto archive

rem --- building on first use
:build
set "SB_MVN="
for %%M in (mvn.cmd) do set "SB_MVN=%%~$PATH:M"
if exist "%SB_BIN%javac.exe" goto has_compiler
>&2 echo swathbook: it is not built yet, and building needs a JDK; "%SB_JAVA_HOME%" has no compiler
exit /b 2
:has_compiler
if defined SB_MVN goto has_maven
>&2 echo swathbook: it is not built yet, and building needs Maven 3.8 or later; there is no mvn on the PATH
exit /b 2
:has_maven
if not exist "%SB_TARGET%\" mkdir "%SB_TARGET%" 2>nul
if exist "%SB_TARGET%\" goto has_target
>&2 echo swathbook: it is not built yet, and "%SB_TARGET%" cannot be written
exit /b 2
:has_target
mkdir "%SB_LOCK%" 2>nul
if not errorlevel 1 goto run_maven
>&2 echo swathbook: it is being built by another start; try again when that is done (or delete "%SB_LOCK%")
exit /b 2
:run_maven
>&2 echo swathbook: first use, building the program (a minute or so)
pushd "%SB_HOME%.."
set "SB_CALLER_JAVA=%JAVA_HOME%"
set "JAVA_HOME=%SB_JAVA_HOME%"
call "%SB_MVN%" -B -ntp -Dmaven.test.skip=true package >"%SB_LOG%" 2>&1 <nul
set "SB_CODE=%errorlevel%"
set "JAVA_HOME=%SB_CALLER_JAVA%"
popd
rmdir "%SB_LOCK%"
if not "%SB_CODE%"=="0" goto build_failed
if not exist "%SB_JAR%" goto nothing_built
if exist "%SB_LIB%\" goto archive
:nothing_built
>&2 echo swathbook: building left no "%SB_JAR%"; see "%SB_LOG%"
exit /b 3
:build_failed
>&2 echo swathbook: building failed; the end of "%SB_LOG%":
set "SB_SKIP=0"
for /f %%N in ('find /c /v "" ^< "%SB_LOG%"') do set /a SB_SKIP=%%N-20
if %SB_SKIP% LSS 0 set "SB_SKIP=0"
>&2 more +%SB_SKIP% "%SB_LOG%"
exit /b 3

rem --- the class-data archive. Java uses it only with the very files and paths it was made from, so
rem what it was made from is written beside it. One that cannot be made is not missed.
:archive
set "SB_PART=%SB_KEEP%.%RANDOM%%RANDOM%.part"
rem Where this folder cannot be written the system says so itself, unless what surrounds it is told not to.
2>nul (>"%SB_PART%" echo %SB_VERSION% "%SB_JAVA_HOME%")
if not exist "%SB_PART%" goto start
for %%F in ("%SB_JAR%" "%SB_LIB%\*.jar") do >>"%SB_PART%" echo "%%~fF" %%~zF %%~tF
fc /b "%SB_PART%" "%SB_KEEP%.key" >nul 2>&1
if not errorlevel 1 goto archive_done
rem A tank of the demo book needs nearly every class that the quick commands need.
"%SB_JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "%SB_JAR%" init "%SB_PART%.book" --demo >nul 2>&1 <nul
"%SB_JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:off -XX:DumpLoadedClassList="%SB_PART%.lst" -jar "%SB_JAR%" check nd-1-june --book "%SB_PART%.book" >nul 2>&1 <nul
if exist "%SB_PART%.book\" rmdir /s /q "%SB_PART%.book" >nul 2>&1
"%SB_JAVA%" -XX:TieredStopAtLevel=1 -Xshare:dump -XX:ErrorFile="%SB_PART%.err" -XX:SharedClassListFile="%SB_PART%.lst" -XX:SharedArchiveFile="%SB_PART%.jsa" -cp "%SB_JAR%" >nul 2>&1 <nul
del /f /q "%SB_PART%.lst" "%SB_PART%.err" "%SB_KEEP%.jsa" >nul 2>&1
if not exist "%SB_PART%.jsa" goto archive_key
move /y "%SB_PART%.jsa" "%SB_KEEP%.jsa" >nul 2>&1
if not exist "%SB_PART%.jsa" goto archive_key
rem One that another start is using cannot be replaced; the next start makes it anew.
del /f /q "%SB_PART%.jsa" >nul 2>&1
goto archive_done
rem The key is written also when there is no archive, so that it is not tried again at every start.
:archive_key
move /y "%SB_PART%" "%SB_KEEP%.key" >nul 2>&1
:archive_done
if exist "%SB_PART%" del /f /q "%SB_PART%" >nul 2>&1

:start
rem Java writes its own warnings to standard output, which belongs to the result.
rem The serial collector takes less of the processors and lets a smaller heap grow.
set "SB_FLAGS=-Xlog:disable -Xlog:all=error:stderr -Xshare:auto -XX:-UsePerfData"
rem A command that computes for long gains less by a quick start than by quick code. The command is the
rem first word that is no option. It is no subroutine: call prints its own help where a word asks for help.
set "SB_LONG="
:next_word
set "SB_WORD=%~1"
if not defined SB_WORD goto flags
if not "%SB_WORD:~0,1%"=="-" goto the_command
shift /1
goto next_word
:the_command
for %%C in (plan season) do if "%SB_WORD%"=="%%C" set "SB_LONG=1"
if "%SB_WORD%"=="audit" set "SB_LONG=audit"
:flags
rem Code of many small parts: with fewer of them copied into each other it is made in half the time.
if "%SB_LONG%"=="1" set "SB_FLAGS=%SB_FLAGS% -XX:InlineSmallCode=1000 -XX:FreqInlineSize=120"
rem A short command is over before its code is worth much work: one quick compiler that takes small
rem methods early, and no bytecode made for what is built by reflection.
if not defined SB_LONG set "SB_FLAGS=%SB_FLAGS% -XX:TieredStopAtLevel=1 -XX:CICompilerCount=1 -XX:CompileThresholdScaling=0.3 -XX:C1MaxInlineSize=10 -XX:C1MaxInlineLevel=2 -Xmn48m -Dsun.reflect.inflationThreshold=2147483647"
set "SB_COLLECTOR=-XX:+UseSerialGC"
if not "%SB_LONG%"=="audit" goto start_java
rem Much code, each part of it for a short while: the second compiler would work longer on it than the
rem code it makes does. A journal of a million rows stays until the end: there is room for it at
rem once, and what outlives a collection is moved once and by all processors.
set "SB_FLAGS=%SB_FLAGS% -XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=0.3"
set "SB_ROOM=-XX:+UseParallelGC -XX:-UseAdaptiveSizePolicy -Xms1g -Xmn128m -XX:MaxTenuringThreshold=0 -XX:SurvivorRatio=30"
rem Windows counts memory when it is asked for: a Java that is not given as much would not even start.
"%SB_JAVA%" %SB_ROOM% -version >nul 2>&1 <nul
set "SB_ROOMY=%errorlevel%"
if "%SB_ROOMY%"=="0" set "SB_COLLECTOR=%SB_ROOM%"
if not "%SB_ROOMY%"=="0" set "SB_FLAGS=%SB_FLAGS% -XX:CompressedClassSpaceSize=64m"
:start_java
set "SB_FLAGS=%SB_FLAGS% %SB_COLLECTOR%"
rem Java ends with 1 when it does not start, which here means that something is blocked. What most
rem often keeps it from starting is what is set for every Java of the machine.
if defined JAVA_TOOL_OPTIONS goto check_options
if defined JDK_JAVA_OPTIONS goto check_options
if not defined _JAVA_OPTIONS goto hand_over
:check_options
"%SB_JAVA%" %SB_FLAGS% -version >nul 2>&1 <nul
if "%errorlevel%"=="0" goto hand_over
>&2 echo swathbook: Java does not start with what JAVA_TOOL_OPTIONS, JDK_JAVA_OPTIONS or _JAVA_OPTIONS asks of it
exit /b 2
:hand_over
if not exist "%SB_KEEP%.jsa" goto start_plain
"%SB_JAVA%" %SB_FLAGS% -XX:SharedArchiveFile="%SB_KEEP%.jsa" -jar "%SB_JAR%" %*
exit /b %errorlevel%
:start_plain
"%SB_JAVA%" %SB_FLAGS% -jar "%SB_JAR%" %*
exit /b %errorlevel%

rem --- the version of the Java in SB_JAVA, as its release file or else as the program itself says
:read_version
set "SB_VERSION=none"
set "SB_MAJOR=0"
if not exist "%SB_JAVA%" exit /b 0
for %%J in ("%SB_JAVA%") do set "SB_RELEASE=%%~dpJ..\release"
if not exist "%SB_RELEASE%" goto ask_version
for /f "usebackq tokens=2 delims==" %%V in (`findstr /b "JAVA_VERSION=" "%SB_RELEASE%"`) do set "SB_VERSION=%%~V"
goto split_version
:ask_version
for /f "usebackq tokens=3" %%V in (`call "%SB_JAVA%" -version 2^>^&1 ^| findstr /i "version"`) do set "SB_VERSION=%%~V"
:split_version
for /f "tokens=1 delims=.-+ " %%V in ("%SB_VERSION%") do set /a "SB_MAJOR=%%V" 2>nul
exit /b 0
