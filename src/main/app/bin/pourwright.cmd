@echo off
rem Starts Pourwright from wherever it lies. JAVA_HOME is used when it is set, else the path. It uses no class-data archive.
setlocal DisableDelayedExpansion
for %%I in ("%~dp0..") do set "here=%%~fI"
set "java="
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if not defined java for %%I in (java.exe) do set "java=%%~$PATH:I"
if not defined java (
  echo Pourwright needs Java 17 or newer: none was found. Set JAVA_HOME or install one. 1>&2
  exit /b 3
)
"%java%" -Xshare:auto -Xlog:disable -Xlog:all=off ^
  -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -XX:-UsePerfData ^
  -XX:TieredStopAtLevel=1 -XX:+UseSerialGC "-Dpourwright.home=%here%" "-Dlibrary.jline.path=%here%\lib\native" ^
  -cp "%here%\lib\pourwright.jar" pourwright.cli.Main %*
exit /b %ERRORLEVEL%
