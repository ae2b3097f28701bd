# Build stage: the SDK, the whole source, a framework-dependent publish.
FROM mcr.microsoft.com/dotnet/sdk:10.0 AS build
WORKDIR /source
COPY global.json Directory.Build.props Directory.Packages.props .editorconfig ./
COPY src ./src
COPY soundings ./soundings
RUN dotnet publish src/DayBrief.Service -c Release -o /app

# Run stage: the runtime only, an unprivileged user, the data on a volume.
FROM mcr.microsoft.com/dotnet/aspnet:10.0
WORKDIR /app
COPY --from=build /app ./
ENV ASPNETCORE_URLS=http://+:8080 DAYBRIEF_DATA=/data
RUN mkdir /data && chown $APP_UID /data
VOLUME /data
USER $APP_UID
EXPOSE 8080
HEALTHCHECK --interval=30s --timeout=5s --start-period=15s CMD ["dotnet", "DayBrief.Service.dll", "health"]
ENTRYPOINT ["dotnet", "DayBrief.Service.dll"]
