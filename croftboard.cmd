@echo off
rem Starts Croftboard; builds it first when there is no build. Needs a JDK 17+ and Maven 3.8+ on the PATH.
setlocal
set "HERE=%~dp0"
set "JAR=%HERE%target\croftboard.jar"
where java >nul 2>nul || (echo croftboard: please install a JDK 17 or newer and put it on the PATH 1>&2 & exit /b 1)
set "STALE=1"
if exist "%JAR%" (
  set "STALE=0"
  powershell -NoProfile -Command "$b=(Get-Item '%JAR%').LastWriteTime; $s=Get-ChildItem -Recurse -File '%HERE%src\main','%HERE%pom.xml' | Where-Object { $_.LastWriteTime -gt $b }; exit [int]($s.Count -gt 0)" || set "STALE=1"
)
if "%STALE%"=="1" (
  where mvn >nul 2>nul || (echo croftboard: please install Maven 3.8 or newer and put it on the PATH 1>&2 & exit /b 1)
  echo croftboard: building once, a minute or two 1>&2
  pushd "%HERE%" & call mvn -q -B -Dmaven.test.skip=true package 1>&2 || (popd & exit /b 1)
  popd
)
rem Paper is done in seconds: the quick compiler alone halves its work.
set "TIER=4"
if "%~1"=="paper" set "TIER=1"
java -XX:+UseSerialGC -XX:TieredStopAtLevel=%TIER% -jar "%JAR%" %*
exit /b %ERRORLEVEL%
